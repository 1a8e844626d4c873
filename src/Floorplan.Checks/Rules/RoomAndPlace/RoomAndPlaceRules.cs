using Floorplan.Checks.Framework;

namespace Floorplan.Checks.Rules.RoomAndPlace;

/// <summary>The rules of this folder, in the order they are listed.</summary>
internal static class RoomAndPlaceRules
{
    public static IReadOnlyList<Rule> All { get; } =
    [
        new OutsideShell(),
        new Overlap(),
        new ClearSpaceBlocked(),
        new DoorBlocked(),
        new PersonInWay(),
        new WillNotGoIn(),
        new Headroom(),
        new RoomTooSmall(),
    ];
}
