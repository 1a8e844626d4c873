using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Language.Text;
using Floorplan.Model.Shapes;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Shells;

/// <summary>
/// The box that the unit is built into. All outlines are in plan coordinates: millimetres from the inside finished
/// south-west corner, so the outside of the shell has negative coordinates. Heights are from the finished floor.
/// </summary>
public sealed record Shell
{
    public required ShellKind Kind { get; init; }

    /// <summary>As a person would say it: <c>40 ft high-cube container</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Outside faces of the shell.</summary>
    public required Polygon Outside { get; init; }

    /// <summary>Inside faces of the bare shell, before linings.</summary>
    public required Polygon BareInside { get; init; }

    /// <summary>Finished inside faces. Its lower left bound is the origin.</summary>
    public required Polygon Finished { get; init; }

    /// <summary>Height of the finished ceiling above the finished floor (at the eaves for a shed).</summary>
    public required Length CeilingHeight { get; init; }

    /// <summary>The steelwork datum: outside face, south-west bottom corner, in plan coordinates (both negative).</summary>
    public required PlanPoint Datum { get; init; }

    /// <summary>Height of that datum relative to the finished floor (negative).</summary>
    public required Length DatumHeight { get; init; }

    /// <summary>Top of the shell above the finished floor.</summary>
    public required Length Top { get; init; }

    /// <summary>Thickness of the floor build-up added inside (lining floor), in which falls can be made.</summary>
    public Length FloorBuildUp { get; init; }

    public Length WallLining { get; init; }

    /// <summary>What the walls are lined with, as written; empty when not said.</summary>
    public string WallLiningOf { get; init; } = "";

    public Length CeilingLining { get; init; }

    /// <summary>What the ceiling is lined with, as written; empty when not said.</summary>
    public string CeilingLiningOf { get; init; } = "";

    /// <summary>What the floor is built up of, as written; empty when not said.</summary>
    public string FloorBuildUpOf { get; init; } = "";

    /// <summary>How far the ground lies below the finished floor; null when not said.</summary>
    public Length? GroundBelowFloor { get; init; }

    /// <summary>The end with cargo or ramp doors; null when there is none.</summary>
    public Side? DoorEnd { get; init; }

    /// <summary>The hitch end of a trailer; null otherwise.</summary>
    public Side? HitchEnd { get; init; }

    public int Axles { get; init; }

    public ShellLoads Loads { get; init; } = ShellLoads.None;

    /// <summary>Degrees from plan north (up the sheet) to true north, clockwise; null when not said.</summary>
    public double? TrueNorth { get; init; }

    /// <summary>Posts, rails, headers, sills and castings: where not to cut.</summary>
    public IReadOnlyList<FrameMember> Frame { get; init; } = [];

    public SourceSpan Span { get; init; }
}

public enum ShellKind
{
    Container,
    Trailer,
    Shed,
}

/// <summary>One piece of the shell's frame, as a rectangle on the outside of one wall.</summary>
/// <param name="Wall">For an L-shaped shed the side that the wall faces.</param>
/// <param name="From">West or south end, in plan coordinates along the wall.</param>
/// <param name="Bottom">Above the finished floor.</param>
/// <param name="Origin">Where the size comes from: standard and clause, common practice, or from memory.</param>
public sealed record FrameMember(FramePart Part, string Name, Side Wall, Length From, Length To, Length Bottom, Length Top, string Origin)
{
    /// <summary>
    /// Place of that wall's outside face across the wall, in plan coordinates; null where the shell has one wall on that side.
    /// </summary>
    public Length? At { get; init; }
}

public enum FramePart
{
    Post,
    TopRail,
    BottomRail,
    Header,
    Sill,
    Casting,
    WheelArch,
}
