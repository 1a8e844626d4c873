using Floorplan.Sizing.Sizes;

namespace Floorplan.Sizing.Water.Sizes;

/// <summary>Cold water: what is drawn at once and in a day, pipes, and the pressure that is left.</summary>
internal static class WaterSizes
{
    /// <summary>Null where the plan has no water.</summary>
    public static SizedSubject? Of(PlanFacts facts) => null;
}
