namespace Floorplan.Language.Words.Terms;

/// <summary>Whether a heater heats water as it flows, or keeps it hot.</summary>
public enum HeaterForm
{
    Instant,
    Tank,
}
