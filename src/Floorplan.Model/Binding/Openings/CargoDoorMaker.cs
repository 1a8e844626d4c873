using Floorplan.Language.Quantities;
using Floorplan.Language.Text;
using Floorplan.Model.Binding.Rooms;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shells;

namespace Floorplan.Model.Binding.Openings;

/// <summary>The shell's own doors as an opening between outside and the room at that end.</summary>
internal static class CargoDoorMaker
{
    /// <summary>Null when the shell has none or no room stands at that end.</summary>
    public static Opening? Of(
        BuiltShell shell, WallFinder walls, IReadOnlyList<LaidRoom> laid, IReadOnlyDictionary<string, Room> rooms, SourceSpan span)
    {
        if (shell.Door is not { } door)
        {
            return null;
        }

        var middle = shell.Finished.Bounds.Centre.Y;
        foreach (var room in laid)
        {
            foreach (var wall in walls.ToOutside(room).Where(w => w.Side == door.End && w.From <= middle && w.To >= middle))
            {
                return Make(door, wall, rooms[room.Id], shell.Shell.CeilingHeight, middle, span);
            }
        }

        return null;
    }

    private static Opening Make(ShellDoor door, WallStretch wall, Room room, Length ceiling, Length middle, SourceSpan span)
    {
        // Linings narrow the clear way; the floor build-up takes from its height.
        var from = Length.Max(wall.From, middle - (door.Width / 2));
        var to = Length.Min(wall.To, middle + (door.Width / 2));
        return new Opening
        {
            Id = CargoDoors.Id,
            Label = "Cargo doors",
            Kind = OpeningKind.CargoDoor,
            RoomA = room,
            RoomB = null,
            Wall = door.End,
            Width = to - from,
            Height = Length.Min(door.Height + door.Sill, ceiling),
            Start = wall.Middle(from),
            End = wall.Middle(to),
            Reveal = wall.Through(from, to).ToPolygon(),
            InShell = true,
            Swing = SwingShape.Of(SwingKind.Double, wall, from, to, door.End, null, true),
            Span = span,
        };
    }
}
