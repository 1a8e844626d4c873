namespace Floorplan.Model.Services;

/// <summary>Air brought into a room or drawn out of it.</summary>
public abstract record AirPoint : RoomService
{
    public override string Noun => "air point";
}
