namespace Floorplan.Language.Quantities;

/// <summary>
/// What a printed number measures. Finer than <see cref="QuantityKind"/>: water in a tank and the air of a room are both volumes and have
/// different units on paper. <see cref="PrintedUnits"/> says how each is printed. Values are given in the base unit named here.
/// </summary>
public enum Measure
{
    /// <summary>Floors and walls; m2.</summary>
    Area,

    /// <summary>Rooms; m3.</summary>
    Volume,

    /// <summary>Water and other liquids in tanks; m3.</summary>
    Liquid,

    /// <summary>Water; m3/s.</summary>
    Flow,

    /// <summary>Air; m3/s.</summary>
    AirFlow,

    /// <summary>Volumes of the room, in a second.</summary>
    AirChanges,

    /// <summary>kg.</summary>
    Mass,

    /// <summary>Ice, product or scraps made or used in a time; kg/s.</summary>
    MassFlow,

    /// <summary>Weight on a length of floor or rail, and of a bar of steel; kg/m.</summary>
    LineLoad,

    /// <summary>Weight on an area of floor; kg/m2.</summary>
    FloorLoad,

    /// <summary>Of steel, insulation and water; kg/m3.</summary>
    Density,

    /// <summary>Degrees Celsius.</summary>
    Temperature,

    /// <summary>From one temperature to another; K.</summary>
    TemperatureDifference,

    /// <summary>Of electric machines and heaters; W.</summary>
    Power,

    /// <summary>What electric lines carry, with the part of it that does no work; VA.</summary>
    ApparentPower,

    /// <summary>Heat that is taken away or brought in a time; W.</summary>
    Heat,

    /// <summary>What a meter counts; J.</summary>
    Energy,

    /// <summary>V.</summary>
    Voltage,

    /// <summary>A.</summary>
    Current,

    /// <summary>lux.</summary>
    Illuminance,
    LuminousFlux,

    /// <summary>Pa.</summary>
    Pressure,

    /// <summary>Of the ground under a foot, and of wind on a wall; Pa.</summary>
    SurfacePressure,

    /// <summary>m/s.</summary>
    Speed,

    /// <summary>Of wind; m/s.</summary>
    WindSpeed,

    /// <summary>N.</summary>
    Force,

    /// <summary>Shares and slopes; 1 is the whole.</summary>
    Ratio,
}
