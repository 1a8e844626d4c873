using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Language.Text;
using Floorplan.Model.Details;
using Floorplan.Model.Details.Tables;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Stations;

/// <summary>A thing that stands on the floor or hangs over it: station, store, bin or sink.</summary>
public sealed record Station
{
    public required string Id { get; init; }

    public required string Label { get; init; }

    public required StationRole Role { get; init; }

    /// <summary>What the sheets call it: its label, or <c>hand sink s1</c> and <c>bin b1</c> for one without.</summary>
    public string Caption => Label != Id ? Label : Role switch
    {
        StationRole.Sink => $"{Purpose} sink {Id}".TrimStart(),
        StationRole.Bin when !Id.Contains("bin", StringComparison.OrdinalIgnoreCase) => "bin " + Id,
        _ => Id,
    };

    /// <summary>Item number on the sheets, from 1 in the order of the file.</summary>
    public required int Item { get; init; }

    public required Room Room { get; init; }

    /// <summary>Footprint on plan, turned; a many-sided polygon when round.</summary>
    public required Polygon Footprint { get; init; }

    /// <summary>Bounding box of the footprint, exact.</summary>
    public required Box Bounds { get; init; }

    /// <summary>
    /// Its own width and depth, as the plan says its size; where it is turned a quarter they change places in <see cref="Bounds"/>.
    /// </summary>
    public Length Width => Said.Get(StationTable.Size)?.Width ?? Bounds.Width;

    /// <inheritdoc cref="Width"/>
    public Length Depth => Said.Get(StationTable.Size)?.Depth ?? Bounds.Depth;

    /// <summary>Diameter when round, otherwise null.</summary>
    public Length? Diameter { get; init; }

    /// <summary>Underside above the finished floor; more than zero when hung or wall-mounted.</summary>
    public Length Bottom { get; init; }

    public required Length Top { get; init; }

    /// <summary>Height that hands work at; the top unless said.</summary>
    public Length WorkHeight { get; init; }

    /// <summary>Whether the plan says how high it is, or how high hands go to it; otherwise its heights are usual ones.</summary>
    public bool HeightIsSaid { get; init; }

    public bool Hung { get; init; }

    /// <summary>On wheels: may be rolled out of the way and is not an obstacle to bringing things in.</summary>
    public bool Movable { get; init; }

    public IReadOnlyList<WorkerPlace> Workers { get; init; } = [];

    public IReadOnlyList<ClearSpace> Clears { get; init; } = [];

    /// <summary>All that the plan says of it, its kinds folded in, by the rows of <see cref="StationTable"/>.</summary>
    public SaidValues Said { get; init; } = SaidValues.None;

    public IReadOnlyList<Need> Needs => Said.Get(StationTable.Needs) ?? [];

    public IReadOnlyList<Waste> Wastes => Said.Get(StationTable.Wastes) ?? [];

    public WorkKind? WorkKind => Said.Figure(StationTable.WorkKind);

    /// <summary>How long one piece takes.</summary>
    public Quantity? WorkEach => Said.Figure(StationTable.WorkEach);

    /// <summary>How much that differs from piece to piece: standard deviation over mean.</summary>
    public Quantity? WorkSpread => Said.Figure(StationTable.WorkSpread);

    /// <summary>How long hands stop after so many pieces.</summary>
    public Quantity? Pause => Said.Figure(StationTable.Pause);

    /// <summary>After how many pieces they stop.</summary>
    public Quantity? PauseEvery => Said.Figure(StationTable.PauseEvery);

    /// <summary>The share of pieces that are worked on a second time.</summary>
    public Quantity? Rework => Said.Figure(StationTable.Rework);

    /// <summary>The earlier station where those begin again; null where it is done at once.</summary>
    public string? ReworkAt => Said.Get(StationTable.ReworkAt)?.Id;

    public Quantity? Batch => Said.Figure(StationTable.Batch);

    public Quantity? Cycle => Said.Figure(StationTable.Cycle);

    public Quantity? Stays => Said.Figure(StationTable.Stays);

    public Quantity? Holds => Said.Figure(StationTable.Holds);

    /// <summary>Room for what waits until it is worked on.</summary>
    public Quantity? Waits => Said.Figure(StationTable.Waits);

    /// <summary>What differs for one product of several.</summary>
    public IReadOnlyList<SaidForProduct> ForProducts => Said.Get(StationTable.ForProducts) ?? [];

    public Quantity? WeightEmpty => Said.Figure(StationTable.WeightEmpty);

    public Quantity? WeightFull => Said.Figure(StationTable.WeightFull);

    /// <summary>Volume of a bin or tank, when said.</summary>
    public Quantity? Volume => Said.Figure(StationTable.Volume);

    /// <summary>The circuit that its power comes from, as written; empty when not said.</summary>
    public string Circuit => Said.Get(StationTable.Circuit) ?? "";

    /// <summary>Between the water inlet and the rim of what it fills; null when not said.</summary>
    public Length? AirGap => Said.Figure(StationTable.AirGap);

    /// <summary>Diameter of the water inlet; null when not said.</summary>
    public Length? Inlet => Said.Figure(StationTable.Inlet);

    /// <summary>What a sink, bin or store is for, as written: <c>hand</c>, <c>60 L</c>, <c>rack</c>.</summary>
    public string Purpose { get; init; } = "";

    public SourceSpan Span { get; init; }

    public bool IsHandSink => Role == StationRole.Sink && Purpose is "hand" or "hands" or "handwash" or "hand-wash" or "washbasin";

    public bool IsSterilizer => Role == StationRole.Sink && Purpose == "sterilizer";
}

public enum StationRole
{
    Station,
    Store,
    Bin,
    Sink,
}

/// <summary>Where one person stands.</summary>
/// <param name="Centre">Middle of the standing place.</param>
/// <param name="Stands">The side of the station that the person stands on; faces the opposite way.</param>
/// <param name="Floor">The standing place on plan, <see cref="WorkerSize"/> in size.</param>
public sealed record WorkerPlace(int Number, PlanPoint Centre, Side Stands, Polygon Floor)
{
    /// <summary>Middle of the edge towards the station, from where reach is measured.</summary>
    public PlanPoint Front
    {
        get
        {
            var half = new Length(WorkerSize.Depth.Nanometres / 2);
            return Stands switch
            {
                Side.North => Centre with { Y = Centre.Y - half },
                Side.South => Centre with { Y = Centre.Y + half },
                Side.East => Centre with { X = Centre.X - half },
                _ => Centre with { X = Centre.X + half },
            };
        }
    }
}

/// <summary>Floor that must stay free of fixed things.</summary>
public sealed record ClearSpace(Side Side, Length Depth, string Purpose, Polygon Floor, SourceSpan Span);

/// <summary>A service that a station needs.</summary>
/// <param name="At">Temperature or pressure; of power the voltage.</param>
public sealed record Need(NeedKind Kind, Quantity? Amount, Quantity? At, SourceSpan Span)
{
    /// <summary>Amounts as written beside the first, such as the current of a machine.</summary>
    public IReadOnlyList<Quantity> Others { get; init; } = [];

    /// <summary>Phases of the power: 1 or 3; null when not said.</summary>
    public int? Phases { get; init; }

    /// <summary>Water runs only until the thing is full.</summary>
    public bool IsToFill { get; init; }

    /// <summary>As a plan writes it: <c>hot 4 L/min at 60 C</c>, <c>power 1.5 kW at 230 V three-phase</c>.</summary>
    public string Print(UnitSystem units)
    {
        var parts = new List<string> { Kind.Word() };
        parts.AddRange(new[] { Amount }.OfType<Quantity>().Concat(Others).Select(a => QuantityText.Of(a, units)));
        parts.Add(At is { } at ? $"at {QuantityText.Of(at, units)}" : "");
        parts.Add(Phases switch { 1 => "single-phase", 3 => "three-phase", _ => "" });
        parts.Add(IsToFill ? "to fill" : "");
        return string.Join(' ', parts.Where(p => p.Length > 0));
    }
}

public enum NeedKind
{
    ColdWater,
    HotWater,
    Drain,
    Power,
    CompressedAir,
    Ice,
    Steam,

    /// <summary>Water of 82 C near, to dip knives and saws in.</summary>
    Sterilizer,
}

/// <summary>A station that another one names.</summary>
public sealed record SaidStation(string Id, SourceSpan Span);

/// <summary>Waste per product unit and the id of the bin that it goes to (null when not said).</summary>
public sealed record Waste(Quantity? Amount, string? BinId, SourceSpan Span)
{
    /// <summary><c>0.12 kg to offal-bin</c></summary>
    public string Print(UnitSystem units)
        => ((Amount is { } amount ? QuantityText.Of(amount, units) : "") + (BinId is { } bin ? $" to {bin}" : "")).Trim();
}

/// <summary>How hard hands work, which says how high they should be.</summary>
public enum WorkKind
{
    Precise,
    Light,
    Heavy,

    /// <summary>Meat, cut with a knife.</summary>
    Cutting,
}

/// <summary>An overhead rail: its path on plan, height of the hooks' underside, pitch of hooks.</summary>
public sealed record OverheadRail(
    string Id, string Label, LineString Path, Length Height, Length? Pitch, IReadOnlyList<string> Through, SourceSpan Span);
