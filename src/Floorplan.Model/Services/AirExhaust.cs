namespace Floorplan.Model.Services;

/// <summary>Air drawn out of a room.</summary>
public sealed record AirExhaust : AirPoint
{
    public override string Kind => "air exhaust";
}
