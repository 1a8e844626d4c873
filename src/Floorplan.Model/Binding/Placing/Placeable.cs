using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Text;
using Floorplan.Model.Binding.Openings;
using Floorplan.Model.Binding.Rooms;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Binding.Placing;

/// <summary>
/// Something that gets a place from relations: a thing in a room (of no size for a service point), or an opening along its wall.
/// </summary>
internal sealed class Placeable
{
    public required string Id { get; init; }

    /// <summary>For an opening the room that its wall is seen from.</summary>
    public required LaidRoom Room { get; init; }

    /// <summary>Size from west to east, as it stands.</summary>
    public Length Width { get; init; }

    /// <summary>Size from south to north, as it stands.</summary>
    public Length Depth { get; init; }

    public required IReadOnlyList<PlaceTerm> Place { get; init; }

    /// <summary>Its name in the text; mistakes that have no better place are shown here.</summary>
    public required SourceSpan Span { get; init; }

    /// <summary>For an opening: the walls that it may be in and how wide it is; null for things in rooms.</summary>
    public OpeningWall? Wall { get; init; }

    public PlaceTerm? FixesX { get; set; }

    public PlaceTerm? FixesY { get; set; }

    public Length? X { get; set; }

    public Length? Y { get; set; }

    /// <summary>Set once a mistake is reported, so that what depends on it is left out without further reports.</summary>
    public bool Failed { get; set; }

    public PlaceTerm? Fixes(Axis axis) => axis == Axis.WestEast ? FixesX : FixesY;

    public Length Size(Axis axis) => axis == Axis.WestEast ? Width : Depth;

    public Length? Start(Axis axis) => axis == Axis.WestEast ? X : Y;

    public void SetStart(Axis axis, Length start)
    {
        if (axis == Axis.WestEast)
        {
            X = start;
        }
        else
        {
            Y = start;
        }
    }

    public Box? Box => X is { } x && Y is { } y ? new Box(x, y, x + Width, y + Depth) : null;
}
