using Floorplan.Model.Shapes;

namespace Floorplan.Model.Binding.Rooms;

/// <summary>A room with its exact floor; <paramref name="CarvedFrom"/> is null for slices and free areas.</summary>
internal sealed record LaidRoom(RoomDraft Draft, Region Floor, string? CarvedFrom)
{
    public string Id => Draft.Id;
}
