using Floorplan.Language.Details;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;

namespace Floorplan.Model.Details.Tables;

/// <summary>All that the day may say.</summary>
internal static class DayTable
{
    public static IReadOnlyList<SaidRow<DayStatement>> All { get; } =
    [
        SaidRows<DayStatement>.All(
            DayDetails.Target, t => t,
            (t, units) => QuantityText.Of(t.Amount.Value, units)
                + (t.Hours is { } hours ? " for " + QuantityText.Of(hours.Value, units) : "")),
        SaidRows<DayStatement>.Part<IReadOnlyList<CrewSyntax>, string>(
            "crew",
            DayDetails.Crew,
            c => string.Join(", ", c.Select(p => FormattableString.Invariant($"{p.Where.Text} {p.Count.Value}"))),
            (crew, _) => crew),
        SaidRows<DayStatement>.Part<ElsewhereSyntax, string>("elsewhere", DayDetails.Elsewhere, Elsewhere, (text, _) => text),
        SaidRows<DayStatement>.All(DayDetails.Helps, h => $"{h.Where.Text} from {h.From.Text}", (text, _) => text),
        SaidRows<DayStatement>.Part<ArrivalSyntax, ArrivalSyntax>(
            DayDetails.Arrives.Word,
            DayDetails.Arrives,
            a => a,
            (a, units) => a.Load is { } load ? QuantityText.Of(load.Value, units) : "before work"),
        SaidRows<DayStatement>.Of(DayDetails.StartUp),
        SaidRows<DayStatement>.Of(DayDetails.Breaks),
        SaidRows<DayStatement>.Of(DayDetails.HandWash),
        SaidRows<DayStatement>.Of(DayDetails.WashDown),
        SaidRows<DayStatement>.Of(DayDetails.Changeover),
        SaidRows<DayStatement>.All(DayDetails.Rate, Money, (text, _) => text),
        SaidRows<DayStatement>.All(DayDetails.Price, Money, (text, _) => text),
    ];

    private static string Elsewhere(ElsewhereSyntax e) => string.Join(
        ", ",
        new[] { e.Toilets is { } toilets
            ? FormattableString.Invariant($"{toilets.Value} toilets")
            : "", e.Changing
            ? "changing room"
            : "" }.Where(t => t.Length > 0));

    private static string Money(MoneySyntax m)
        => FormattableString.Invariant($"{m.Of.Text} {m.Amount.Value}{(m.Per is { } per ? " per " + per.Text : "")}");
}
