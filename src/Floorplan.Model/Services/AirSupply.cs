namespace Floorplan.Model.Services;

/// <summary>Air brought into a room.</summary>
public sealed record AirSupply : AirPoint
{
    public override string Kind => "air supply";
}
