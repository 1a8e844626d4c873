using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Language.Text;

namespace Floorplan.Model.Stations;

/// <summary>All that is said about a station once its kinds are folded in, before it has a place. Sides are plan sides.</summary>
internal sealed record StationFacts
{
    public string? Label { get; init; }

    /// <summary>Size as described, before turning: along, across; for a round one both are the diameter.</summary>
    public Length? Width { get; init; }

    public Length? Depth { get; init; }

    public Length? Height { get; init; }

    public bool Round { get; init; }

    /// <summary>Quarter turns clockwise.</summary>
    public int Quarters { get; init; }

    public bool Hung { get; init; }

    public Length? Bottom { get; init; }

    public Length? WorkHeight { get; init; }

    public bool Movable { get; init; }

    public IReadOnlyList<WorkerFacts> Workers { get; init; } = [];

    public IReadOnlyList<ClearFacts> Clears { get; init; } = [];

    public IReadOnlyList<Need> Needs { get; init; } = [];

    public IReadOnlyList<Waste> Wastes { get; init; } = [];

    public Work Work { get; init; } = new();

    public Quantity? WeightEmpty { get; init; }

    public Quantity? WeightFull { get; init; }

    public string Purpose { get; init; } = "";

    public Length? AirGap { get; init; }

    public string Circuit { get; init; } = "";

    public Length? Inlet { get; init; }

    public Quantity? Volume { get; init; }

    /// <summary>Size from west to east as it stands; needs <see cref="Width"/> and <see cref="Depth"/>.</summary>
    public Length StandingWidth => (Quarters % 2 == 0 ? Width : Depth) ?? Length.Zero;

    public Length StandingDepth => (Quarters % 2 == 0 ? Depth : Width) ?? Length.Zero;
}

/// <param name="Apart">Between middles; null spreads them over the side.</param>
internal sealed record WorkerFacts(Side Side, int Count, Length? Apart);

internal sealed record ClearFacts(Side Side, Length Depth, string Purpose, SourceSpan Span);
