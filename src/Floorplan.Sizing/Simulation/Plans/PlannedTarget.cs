using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Plans;

/// <summary>What the day is to make of one product.</summary>
/// <param name="Product">Its index in the plan's head; 0 where that names none.</param>
/// <param name="Rate">Items an hour.</param>
/// <param name="Hours">How long work lasts, in ticks.</param>
/// <param name="Items">In all.</param>
internal sealed record PlannedTarget(int Product, string Unit, double Rate, long Hours, int Items)
{
    /// <summary>More items in a day are not run one by one; own bound.</summary>
    private const int MostItems = 50_000;

    /// <summary>A small unit changes over less often; own bound.</summary>
    private const int MostProducts = 12;

    /// <summary>In the order in which they are made.</summary>
    /// <param name="needs">What is missing is added.</param>
    public static IReadOnlyList<PlannedTarget> Of(Plan plan, List<DayNeed> needs)
    {
        var span = plan.Day?.Span ?? plan.Head.Span;
        if (plan.Day is not { Targets: { Count: > 0 } said })
        {
            needs.Add(NoTarget(plan));
            return [];
        }

        if (said.Count > MostProducts)
        {
            needs.Add(new DayNeed(
                "day", FormattableString.Invariant($"{said.Count} products in one day"),
                FormattableString.Invariant($"the {MostProducts} that are made most"), span));
            return [];
        }

        List<PlannedTarget> targets = [.. said.Select(t => Of(plan, t, needs)).OfType<PlannedTarget>()];
        if (targets.Sum(t => (double)t.Items) > MostItems)
        {
            needs.Add(new DayNeed(
                "day", FormattableString.Invariant($"a target of {targets.Sum(t => (double)t.Items)} items"),
                FormattableString.Invariant($"a target of 1 to {MostItems} items a day"), span));
        }

        return targets;
    }

    private static DayNeed NoTarget(Plan plan) => new(
        "day", "no target for the day", $"`day` with `target 60 {StepOfStation.Unit(plan)}/h for 5 h`", plan.Day?.Span ?? plan.Head.Span);

    private static PlannedTarget? Of(Plan plan, DayTarget target, List<DayNeed> needs)
    {
        var products = plan.Head.Products;
        int named = products.Index().Where(p => p.Item.Unit.Equals(target.Unit, StringComparison.OrdinalIgnoreCase))
            .Select(p => p.Index).DefaultIfEmpty(-1).First();
        if (named < 0 && plan.Day!.Targets.Count > 1)
        {
            needs.Add(new DayNeed(
                "day", $"a target of {target.Unit}, which are no product of the plan",
                $"`product {target.Unit}, 1 kg each` in the plan's head", plan.Day.Span));
            return null;
        }

        int product = Math.Max(0, named);
        double hours = target.Hours is { Unit.Kind: QuantityKind.Time } said ? said.Base / 3600 : 0;
        double? rate = target.Amount.Unit.Kind == QuantityKind.Rate ? target.Amount.Base * 3600
            : hours > 0 && PlannedLine.InItems(target.Amount, plan, product) is { } count ? count / hours
            : null;
        if (rate is not > 0 || hours <= 0)
        {
            needs.Add(NoTarget(plan));
            return null;
        }

        double items = Math.Round(rate.Value * hours);
        if (items is < 1 or > MostItems)
        {
            needs.Add(new DayNeed(
                "day", FormattableString.Invariant($"a target of {items} items"),
                FormattableString.Invariant($"a target of 1 to {MostItems} items a day"), plan.Day!.Span));
            return null;
        }

        string unit = products.Count > product ? products[product].Unit : StepOfStation.Unit(plan);
        return new PlannedTarget(product, unit, rate.Value, Ticks.FromSeconds(hours * 3600), (int)items);
    }

    /// <summary>Items come evenly, a load at a time, or are all there before work.</summary>
    public LineSupply Supply(Plan plan)
    {
        if (plan.Day?.ArrivesBeforeWork == true)
        {
            return new LineSupply(Items, TaskTime.None);
        }

        int load = Math.Max(1, (int)Math.Min(PlannedLine.InItems(plan.Day?.Arrives, plan, Product) ?? 1, Math.Max(1, Items)));
        return new LineSupply(Items, TaskTime.OfSeconds(3600 * load / Rate), load);
    }

    /// <summary>All rest together, in the middle of the day.</summary>
    /// <param name="hours">Of all products.</param>
    public static IReadOnlyList<LineBreak> Breaks(Plan plan, long hours)
    {
        long rest = Math.Min(Ticks.Of(plan.Day?.Breaks) ?? 0, hours);
        return rest > 0 ? [new LineBreak((hours - rest) / 2, (hours + rest) / 2)] : [];
    }
}
