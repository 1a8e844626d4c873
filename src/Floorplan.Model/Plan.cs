using Floorplan.Language.Quantities;
using Floorplan.Language.Text;
using Floorplan.Model.Details;
using Floorplan.Model.Flows;
using Floorplan.Model.Limits;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Services;
using Floorplan.Model.Shells;
using Floorplan.Model.Stations;

namespace Floorplan.Model;

/// <summary>One bound layout: everything has a place, a size and a span, and every name is resolved. Immutable.</summary>
public sealed record Plan
{
    public required SourceText Source { get; init; }

    public required PlanHead Head { get; init; }

    public required Shell Shell { get; init; }

    public IReadOnlyList<Room> Rooms { get; init; } = [];

    /// <summary>Walls between rooms, whole, before openings are cut out of them.</summary>
    public IReadOnlyList<Partition> Partitions { get; init; } = [];

    /// <summary>Doors, hatches, windows, openings, chutes, vents, and the shell's own cargo doors.</summary>
    public IReadOnlyList<Opening> Openings { get; init; } = [];

    /// <summary>All that stands on the floor or hangs over it: stations, stores, bins and sinks, in order of item number.</summary>
    public IReadOnlyList<Station> Stations { get; init; } = [];

    public IReadOnlyList<OverheadRail> Rails { get; init; } = [];

    public IReadOnlyList<ServicePoint> Services { get; init; } = [];

    public IReadOnlyList<Flow> Flows { get; init; } = [];

    public Day? Day { get; init; }

    public IReadOnlyList<LimitOverride> Limits { get; init; } = [];

    public IReadOnlyList<Acceptance> Acceptances { get; init; } = [];

    public IReadOnlyList<SheetWish> SheetWishes { get; init; } = [];

    /// <summary>What each statement says, by the tables of its details.</summary>
    public SaidThings Said { get; init; } = SaidThings.None;

    public UnitSystem Units => Head.Units;
}
