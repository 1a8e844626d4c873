using Floorplan.Language.Quantities;
using Floorplan.Language.Text;
using Floorplan.Model.Rates;

namespace Floorplan.Model;

/// <summary>The day's target and crew; used by later calculations and by counts of people.</summary>
/// <param name="Targets">What is made, one product after the other; empty when not said.</param>
/// <param name="Crew">People by room or station id.</param>
public sealed record Day(IReadOnlyList<DayTarget> Targets, IReadOnlyDictionary<string, int> Crew, SourceSpan Span)
{
    /// <summary>How long a station takes to be set for the next product; null when not said.</summary>
    public Quantity? Changeover { get; init; }

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

    /// <summary>Prices and rates that the day itself says.</summary>
    public IReadOnlyList<Rate> Rates { get; init; } = [];

    /// <summary>Toilets for the crew on the same site, but not in this unit.</summary>
    public int ToiletsElsewhere { get; init; }

    /// <summary>The crew has a room to change in on the same site, but not in this unit.</summary>
    public bool ChangingElsewhere { get; init; }
}
