using Floorplan.Model.Openings;

namespace Floorplan.Checks.Measuring;

/// <summary>Which openings lead a person out of the building.</summary>
internal static class Exits
{
    /// <summary>
    /// A walkable opening to outside. Cargo doors are barred from outside, so they count only when the plan says that
    /// they open from inside.
    /// </summary>
    public static bool IsExit(Opening opening) =>
        (opening.RoomA is null || opening.RoomB is null) &&
        (opening.IsWalkable || (opening.Kind == OpeningKind.CargoDoor && opening.OpensFromInside));
}
