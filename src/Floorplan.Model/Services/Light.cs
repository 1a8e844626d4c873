namespace Floorplan.Model.Services;

/// <summary>The light level of a room.</summary>
public sealed record Light : RoomService
{
    public override string Kind => "light";
}
