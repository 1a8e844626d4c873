namespace Floorplan.Checks.Framework;

/// <summary>The unit in which a rule keeps a figure; <see cref="LimitUnits"/> says how it is set and printed.</summary>
public enum LimitUnit
{
    Millimetres,
    SquareMetres,
    CubicMetres,
    Celsius,
    Percent,
    Count,
    Kilograms,
    Lux,

    /// <summary>Volumes of the room in an hour.</summary>
    AirChanges,

    /// <summary>Cubic metres a second.</summary>
    AirFlow,
}
