namespace Floorplan.Language.Quantities;

/// <summary>What a unit measures.</summary>
public enum QuantityKind
{
    Length,
    Area,
    Volume,
    Flow,
    AirFlow,
    Time,
    Mass,
    Temperature,
    Power,
    Energy,
    Voltage,
    Current,
    Illuminance,
    Ratio,
    Rate,
    Count,
    Pressure,
    Money,
    Speed,
    Force,
    LuminousFlux,
}
