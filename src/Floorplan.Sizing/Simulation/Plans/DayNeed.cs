using Floorplan.Language.Text;

namespace Floorplan.Sizing.Simulation.Plans;

/// <summary>A figure without which the day cannot be run.</summary>
/// <param name="Of">Id of the thing that lacks it, or <c>day</c>.</param>
/// <param name="Missing">As the end of a sentence: <c>no work time for pack</c>.</param>
/// <param name="Write">What to write: <c>work 20 s each in station pack</c>.</param>
public sealed record DayNeed(string Of, string Missing, string Write, SourceSpan Span);
