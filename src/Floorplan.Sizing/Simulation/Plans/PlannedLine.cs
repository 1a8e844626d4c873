using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Plans;

/// <summary>The line of a plan, with what each of its steps is.</summary>
/// <param name="Stations">By step; null outside and at hatches.</param>
/// <param name="Needs">What is missing; with any of it there is no line.</param>
/// <param name="TargetPerHour">Items.</param>
/// <param name="Work">How long the working day is.</param>
/// <param name="Unit">The word for the items: <c>fish</c>.</param>
public sealed record PlannedLine(
    ProductLine? Line, IReadOnlyList<Station?> Stations, IReadOnlyList<DayNeed> Needs, double TargetPerHour, long Work, string Unit)
{
    /// <summary>Items of the day.</summary>
    public int Items => Line?.Supply.Items ?? 0;

    /// <summary>
    /// As many items as one thing holds; null where the plan does not say, or says it in a way that is not a number of items.
    /// </summary>
    public static double? InItems(Quantity? said, Plan plan) => said is not { } amount ? null : amount.Unit.Kind switch
    {
        QuantityKind.Count => (double)amount.Number,
        QuantityKind.Mass when ItemKilograms(plan) is { } each => amount.Base / each,
        _ => null,
    };

    /// <summary>Null where the plan does not say.</summary>
    public static double? ItemKilograms(Plan plan) => plan.Head.Products.Count > 0 ? plan.Head.Products[0].WeightEach?.Base : null;
}
