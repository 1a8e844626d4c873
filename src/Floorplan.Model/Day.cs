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

    /// <summary>How many come at a time; null when not said.</summary>
    public Quantity? Arrives { get; init; }

    /// <summary>All items are there before work.</summary>
    public bool ArrivesBeforeWork { get; init; }

    /// <summary>From the first person in to the first item; null when not said.</summary>
    public Quantity? StartUp { get; init; }

    /// <summary>Cleaning after the last item; null when not said.</summary>
    public Quantity? WashDown { get; init; }

    /// <summary>On the way into a room; null when not said.</summary>
    public Quantity? HandWash { get; init; }

    /// <summary>Who helps where when they have nothing to do: rooms or stations, both as in <see cref="Crew"/>.</summary>
    public IReadOnlyList<(string Where, string From)> Helps { get; init; } = [];

    /// <summary>Toilets for the crew on the same site, but not in this unit.</summary>
    public int ToiletsElsewhere { get; init; }

    /// <summary>The crew has a room to change in on the same site, but not in this unit.</summary>
    public bool ChangingElsewhere { get; init; }
}
