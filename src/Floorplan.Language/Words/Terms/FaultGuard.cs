namespace Floorplan.Language.Words.Terms;

/// <summary>What cuts an outlet off when current leaks to earth.</summary>
public enum FaultGuard
{
    /// <summary>Ground-fault circuit interrupter, the word in North America.</summary>
    Gfci,

    /// <summary>Residual-current device, the word elsewhere.</summary>
    Rcd,
}
