namespace Floorplan.Language.Diagnostics;

/// <summary>How much a mistake or finding weighs.</summary>
public enum Severity
{
    /// <summary>Advice.</summary>
    Note,

    /// <summary>A model code or trade practice is not met.</summary>
    Warning,

    /// <summary>It cannot be read, built or used as written, or it breaks a binding law with a number.</summary>
    Error,
}
