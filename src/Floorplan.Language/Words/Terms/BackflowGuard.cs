namespace Floorplan.Language.Words.Terms;

/// <summary>What keeps used water from being sucked back into the pipe.</summary>
public enum BackflowGuard
{
    VacuumBreaker,
    BackflowPreventer,
}
