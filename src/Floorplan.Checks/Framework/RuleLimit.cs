using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model;

namespace Floorplan.Checks.Framework;

/// <summary>One figure of a rule under one choice of code.</summary>
/// <param name="Key">What the figure is, for sentences: <c>walk from station to hand sink</c>.</param>
/// <param name="Value">In <paramref name="Unit"/>: millimetres for lengths.</param>
/// <param name="Codes">Under which codes it applies; empty means all.</param>
/// <param name="Severity">Error only for a confirmed binding law with a number, or a thing that cannot be built as drawn.</param>
public sealed record RuleLimit(string Key, double Value, LimitUnit Unit, Source Source, Severity Severity, params CodeChoice[] Codes);

public enum LimitUnit
{
    Millimetres,
    SquareMetres,
    Percent,
    Count,
}
