using Floorplan.Language.Quantities;
using Floorplan.Language.Text;

namespace Floorplan.Model;

/// <summary>The day's target and crew; used by later calculations and by counts of people.</summary>
/// <param name="Target">Such as <c>120 fish/h</c>; null when not said.</param>
/// <param name="Hours">Working time; null when not said.</param>
/// <param name="Crew">People by room or station id.</param>
public sealed record Day(Quantity? Target, Quantity? Hours, IReadOnlyDictionary<string, int> Crew, SourceSpan Span)
{
    /// <summary>All together; null when not said.</summary>
    public Quantity? Breaks { get; init; }

    /// <summary>Toilets for the crew on the same site, but not in this unit.</summary>
    public int ToiletsElsewhere { get; init; }

    /// <summary>The crew has a room to change in on the same site, but not in this unit.</summary>
    public bool ChangingElsewhere { get; init; }
}
