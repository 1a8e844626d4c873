namespace Floorplan.Language.Words.Terms;

/// <summary>Which way air is moved at a room.</summary>
public enum AirDirection
{
    /// <summary>Brought in.</summary>
    Supply,

    /// <summary>Drawn out.</summary>
    Exhaust,
}
