using Floorplan.Language.Diagnostics;
using Floorplan.Model;

namespace Floorplan.Checks.Framework;

/// <summary>One figure of a rule under one choice of code. A rule may give the same key several times, for different codes.</summary>
/// <param name="Key">What the figure is, for sentences: <c>walk from station to hand sink</c>.</param>
/// <param name="Value">In <paramref name="Unit"/>: millimetres for lengths, 2 for 2 %.</param>
/// <param name="Codes">Under which codes it applies; empty means all.</param>
/// <param name="Severity">As wished; <see cref="Source.Heaviest"/> bounds it. Error only for a confirmed binding law with a number.</param>
public sealed record RuleLimit(string Key, double Value, LimitUnit Unit, Source Source, Severity Severity, params CodeChoice[] Codes)
{
    public bool AppliesUnder(CodeChoice code) => Codes.Length == 0 || Codes.Contains(code);
}

public enum LimitUnit
{
    Millimetres,
    SquareMetres,
    Percent,
    Count,
    Kilograms,
    Lux,

    /// <summary>Volumes of the room in an hour.</summary>
    AirChanges,

    /// <summary>Cubic metres a second.</summary>
    AirFlow,
}
