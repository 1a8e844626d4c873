namespace Floorplan.Language.Words;

/// <summary>Whether what a word says changes anything: a place, a finding or a sheet.</summary>
public enum Use
{
    Used,

    /// <summary>Some forms of it are used, others not yet.</summary>
    Partly,

    /// <summary>Read and kept, but no calculation uses it yet.</summary>
    NotYet,
}
