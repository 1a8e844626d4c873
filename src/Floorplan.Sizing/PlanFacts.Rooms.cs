using Floorplan.Sizing.Rooms;

namespace Floorplan.Sizing;

/// <content>Sizes of rooms.</content>
public sealed partial class PlanFacts
{
    private IReadOnlyDictionary<string, RoomSize>? roomSizes;

    /// <summary>By the id of the room.</summary>
    public IReadOnlyDictionary<string, RoomSize> RoomSizes => Once(ref roomSizes, RoomSize.Of);
}
