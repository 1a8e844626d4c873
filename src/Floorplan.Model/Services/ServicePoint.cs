using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Language.Text;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Services;

/// <summary>A point where a service reaches the room.</summary>
public sealed record ServicePoint
{
    public required string Id { get; init; }

    public string Label { get; init; } = "";

    public required ServiceKind Kind { get; init; }

    public Room? Room { get; init; }

    public required PlanPoint At { get; init; }

    /// <summary>The wall it is on; null on the floor or ceiling.</summary>
    public Side? Wall { get; init; }

    /// <summary>Above the finished floor; null when not said.</summary>
    public Length? Height { get; init; }

    public bool Cold { get; init; }

    public bool Hot { get; init; }

    /// <summary>Pipe or drain size; null when not said.</summary>
    public Length? Size { get; init; }

    /// <summary>Of a rectangular hole the side north to south, in a wall the height; null when round or not said.</summary>
    public Length? SizeAcross { get; init; }

    /// <summary>For drains: <c>floor</c>, <c>trench</c>, <c>sink</c>. For holes: <c>floor</c>, <c>roof</c>, or empty in a wall.</summary>
    public string Form { get; init; } = "";

    /// <summary>For drains: depth of the outlet below the finished floor; null when not said.</summary>
    public Length? OutletBelow { get; init; }

    /// <summary>For drains: the id of the drain that its line comes to next; null when not said.</summary>
    public string? RunsToId { get; init; }

    /// <summary>For a hose: its length, and the id of the water point that it hangs on.</summary>
    public Length? HoseLength { get; init; }

    public string? OnId { get; init; }

    /// <summary>Of an outlet, switch or heater: its circuit as written; empty when not said.</summary>
    public string Circuit { get; init; } = "";

    /// <summary>Ratings as written, such as <c>100 A</c>, <c>230 V</c>, <c>540 lux</c>.</summary>
    public IReadOnlyList<Quantity> Ratings { get; init; } = [];

    /// <summary>Other words as written, such as <c>single-phase</c>, <c>supply</c>.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    /// <summary>Keeps used water from being sucked back into the pipe: a vacuum breaker or a backflow preventer.</summary>
    public bool GuardsBackflow => BackflowGuards.Any();

    /// <summary>What keeps water from flowing back here, in the words of the plan.</summary>
    public IEnumerable<string> BackflowGuards => Words.Where(w => w is "vacuum breaker" or "backflow preventer");

    public SourceSpan Span { get; init; }
}

public enum ServiceKind
{
    Water,
    Drain,
    Hose,
    Panel,
    Outlet,
    Switch,
    Light,
    AirSupply,
    AirExhaust,
    Heater,

    /// <summary>For a pipe, a cable or a fan.</summary>
    Hole,
}
