using Floorplan.Language.Quantities;
using Floorplan.Model.Binding.Names;
using Floorplan.Model.Binding.Placing;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Binding.Rooms;

/// <summary>Places a rectangular room as any thing is placed, but only by walls and by rooms that have a place already.</summary>
internal sealed class AreaPlacing(NameTable names, Length thickness, Reports reports)
{
    /// <param name="holder">The room that it is carved from as it was before carving, or the whole shell.</param>
    public Box? Find(RoomDraft draft, RoomArea area, LaidRoom holder)
    {
        foreach (var term in area.Place)
        {
            if (term.Other() is { } other && names.Find(other.Text)?.Room is null)
            {
                reports.Error(
                    "room-placed-by-thing",
                    $"room `{draft.Id}` is placed by `{other.Text}`, which is not a room with a place of its own",
                    other.Span,
                    "place it by walls, such as `corner north-west`, or by a room that stands above it in the file");
                return null;
            }
        }

        var placed =
            new Placeable { Id = draft.Id, Room = holder, Width = area.Width, Depth = area.Depth, Place = area.Place, Span = draft.Span };
        new AxisChoice(names, reports).Choose(placed);
        if (!placed.Failed)
        {
            new Solver(names, thickness, reports).Solve([placed]);
        }

        return placed.Failed ? null : placed.Box;
    }
}
