using Floorplan.Sizing.Sizes;

namespace Floorplan.Sizing.Cost;

/// <summary>
/// One figure at a time from its low to its high end, all others in the middle: what that does to the surplus of the first year after
/// building is paid. The one that does most comes first.
/// </summary>
internal static class WhatMatters
{
    private const int MostShown = 12;

    /// <summary>As a table and for a chart; none where no surplus is known, or every figure is one number.</summary>
    public static (IReadOnlyList<SizeTable> Tables, IReadOnlyList<SizeSwing> Swings) Of(MoneyPlan money, Func<double, string> text)
    {
        var shown = Swings(money).Take(MostShown).ToList();
        return shown.Count == 0 ? ([], []) : ([Table(shown, text)], [
            .. shown.Select(s => new SizeSwing(
                $"{s.Factor.Name}: {Factor.Text(s.Factor.Of)}", s.AtLow, s.AtHigh, text(s.AtLow), text(s.AtHigh))),
        ]);
    }

    private static SizeTable Table(List<(Factor Factor, double AtLow, double AtHigh)> swings, Func<double, string> text) => new(
        "What matters most: surplus of the first year, building paid",
        ["What", "From", "To", "Surplus at the low end", "Surplus at the high end", "Difference"],
        [
            .. swings.Select(s => (IReadOnlyList<string>)
            [
                s.Factor.Name, Factor.Text(Range.Of(s.Factor.Of.Low)), Factor.Text(Range.Of(s.Factor.Of.High)),
                text(s.AtLow), text(s.AtHigh), text(Math.Abs(s.AtHigh - s.AtLow)),
            ]),
        ],
        []);

    internal static IReadOnlyList<(Factor Factor, double AtLow, double AtHigh)> Swings(MoneyPlan money)
    {
        return money.Surplus(Middle) is null ? [] : [
            .. money.Factors.Where(f => !f.Of.IsOne).Select(f => (Factor: f, AtLow: At(f, f.Of.Low), AtHigh: At(f, f.Of.High)))
                .OrderByDescending(s => Math.Abs(s.AtHigh - s.AtLow)).ThenBy(s => s.Factor.Name, StringComparer.Ordinal)];

        double At(Factor varied, double value)
        {
            Range Of(Factor f) => ReferenceEquals(f, varied) ? Range.Of(value) : Middle(f);
            return money.Surplus(Of)!.Value.Middle - MoneyPlan.Sum(money.Build, Of).Middle;
        }
    }

    private static Range Middle(Factor factor) => Range.Of(factor.Of.Middle);
}
