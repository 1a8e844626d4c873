using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Plans;

/// <summary>What the day is to make, and when work goes on.</summary>
/// <param name="Rate">Items an hour.</param>
/// <param name="Hours">How long work lasts, in ticks.</param>
/// <param name="Items">In all; 0 where the plan does not say.</param>
internal sealed record DayTarget(double Rate, long Hours, int Items)
{
    /// <summary>More items in a day are not run one by one; own bound.</summary>
    private const int MostItems = 50_000;

    /// <param name="needs">What is missing is added.</param>
    public static DayTarget Of(Plan plan, List<DayNeed> needs)
    {
        var day = plan.Day;
        var span = day?.Span ?? plan.Head.Span;
        double hours = day?.Hours is { Unit.Kind: QuantityKind.Time } said ? said.Base / 3600 : 0;
        double? rate = day?.Target is not { } target ? null
            : target.Unit.Kind == QuantityKind.Rate ? target.Base * 3600
            : hours > 0 && PlannedLine.InItems(target, plan) is { } count ? count / hours
            : null;
        if (rate is not > 0 || hours <= 0)
        {
            needs.Add(new DayNeed(
                "day", "no target for the day", $"`day` with `target 60 {StepOfStation.Unit(plan)}/h for 5 h`", span));
            return new DayTarget(0, 0, 0);
        }

        double items = Math.Round(rate.Value * hours);
        if (items is < 1 or > MostItems)
        {
            needs.Add(new DayNeed(
                "day", FormattableString.Invariant($"a target of {items} items"),
                FormattableString.Invariant($"a target of 1 to {MostItems} items a day"), span));
            return new DayTarget(0, 0, 0);
        }

        return new DayTarget(rate.Value, Ticks.FromSeconds(hours * 3600), (int)items);
    }

    /// <summary>Items come evenly, a load at a time, or are all there before work.</summary>
    public LineSupply Supply(Plan plan)
    {
        if (plan.Day?.ArrivesBeforeWork == true || Rate <= 0)
        {
            return new LineSupply(Items, TaskTime.None);
        }

        int load = Math.Max(1, (int)Math.Min(PlannedLine.InItems(plan.Day?.Arrives, plan) ?? 1, Math.Max(1, Items)));
        return new LineSupply(Items, TaskTime.OfSeconds(3600 * load / Rate), load);
    }

    /// <summary>All rest together, in the middle of the day.</summary>
    public IReadOnlyList<LineBreak> Breaks(Plan plan)
    {
        long rest = plan.Day?.Breaks is { Unit.Kind: QuantityKind.Time } said ? Math.Min(Ticks.FromSeconds(said.Base), Hours) : 0;
        return rest > 0 ? [new LineBreak((Hours - rest) / 2, (Hours + rest) / 2)] : [];
    }
}
