using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Language.Text;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Openings;

/// <summary>A hole in a wall between two rooms, or between a room and outside (a null room is outside).</summary>
public sealed record Opening
{
    public required string Id { get; init; }

    public string Label { get; init; } = "";

    public required OpeningKind Kind { get; init; }

    public Room? RoomA { get; init; }

    public Room? RoomB { get; init; }

    /// <summary>The side that the wall is on, seen from <see cref="RoomA"/> (from the inside room for shell walls).</summary>
    public required Side Wall { get; init; }

    /// <summary>Clear width and height of the hole.</summary>
    public required Length Width { get; init; }

    public required Length Height { get; init; }

    /// <summary>Height of the bottom of the hole above the finished floor.</summary>
    public Length Sill { get; init; }

    /// <summary>Ends of the hole on the wall's centre line; from west to east or from south to north.</summary>
    public required PlanPoint Start { get; init; }

    public required PlanPoint End { get; init; }

    /// <summary>The hole on plan, through the whole thickness of the wall, finished face to face or to the outside face.</summary>
    public required Polygon Reveal { get; init; }

    /// <summary>True when it is cut in the shell, so that the frame matters.</summary>
    public bool InShell { get; init; }

    /// <summary>Place of the leaf; null for openings without one.</summary>
    public Swing? Swing { get; init; }

    public bool ClosesItself { get; init; }

    /// <summary>Opens from inside without key or tool.</summary>
    public bool OpensFromInside { get; init; }

    /// <summary>Equal rises from the ground to the floor; null when the plan gives no steps.</summary>
    public int? Steps { get; init; }

    public bool Ramp { get; init; }

    /// <summary>A rail or a bar guards the edge outside it.</summary>
    public bool Guard { get; init; }

    /// <summary>The frame that the plan asks for; null leaves it to the usual one.</summary>
    public FrameWish? Frame { get; init; }

    /// <summary>Words of the plan about the frame; empty when there are none.</summary>
    public string FrameNote { get; init; } = "";

    /// <summary>Of the corners of the hole in the steel; null when not said.</summary>
    public Length? Radius { get; init; }

    public SourceSpan Span { get; init; }

    /// <summary>Tall enough and low enough that people and trolleys can use it.</summary>
    public bool IsWalkable => Kind is OpeningKind.Door or OpeningKind.Opening && Sill <= Length.FromMillimetres(200);

    /// <summary>People or things get through at all: it is walked through, or it is a cargo door.</summary>
    public bool IsPassage => IsWalkable || Kind == OpeningKind.CargoDoor;

    public PlanPoint Centre => new((Start.X + End.X) / 2, (Start.Y + End.Y) / 2);

    public bool Joins(Room? a, Room? b) => (RoomA?.Id == a?.Id && RoomB?.Id == b?.Id) || (RoomA?.Id == b?.Id && RoomB?.Id == a?.Id);
}

public enum OpeningKind
{
    Door,
    Hatch,
    Window,
    Opening,
    Chute,
    Vent,

    /// <summary>The shell's own cargo or ramp doors.</summary>
    CargoDoor,
}

/// <summary>A door leaf's movement.</summary>
/// <param name="Into">The room it swings into; null is outside.</param>
/// <param name="Hinge">The hinge on plan.</param>
/// <param name="Swept">The floor that the leaf sweeps (a quarter disc per leaf); empty for sliding leaves and strip curtains.</param>
/// <param name="Leaves">One line per leaf in its open position.</param>
public sealed record Swing(
    SwingKind Kind, Room? Into, PlanPoint Hinge, NetTopologySuite.Geometries.Geometry Swept, IReadOnlyList<LineString> Leaves);

public enum SwingKind
{
    Hinged,
    Double,
    Sliding,
    Strip,
    RollUp,
}
