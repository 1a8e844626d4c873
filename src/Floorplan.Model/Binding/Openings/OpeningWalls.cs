using Floorplan.Language.Diagnostics;
using Floorplan.Language.Syntax;
using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Binding.Names;
using Floorplan.Model.Binding.Rooms;
using Floorplan.Model.Shapes;
using Floorplan.Model.Stations;

namespace Floorplan.Model.Binding.Openings;

/// <summary>Finds the wall that an opening is meant to be in, before its place along it is known.</summary>
internal sealed class OpeningWalls(NameTable names, RoomLayout rooms, WallFinder walls, Reports reports)
{
    private readonly List<RelatedSpan> overGaps = [];

    /// <summary>Openings that are meant to lead over floor that belongs to no room; told with the gap.</summary>
    public IReadOnlyList<RelatedSpan> OverGaps => overGaps;

    /// <summary>Null, with a report, when there is no such wall or more than one.</summary>
    public OpeningToPlace? Find(OpeningDraft draft)
    {
        if (draft.First.IsOutside && draft.Second.IsOutside)
        {
            reports.Error(
                "opening-without-room", $"`{draft.Id}` joins outside to outside", draft.Second.Span, "name the room on one side of it");
            return null;
        }

        var inside = draft.First.IsOutside ? draft.Second : draft.First;
        var other = draft.First.IsOutside ? draft.First : draft.Second;
        if (RoomOf(inside) is not { } room)
        {
            return null;
        }

        LaidRoom? beyond = null;
        if (!other.IsOutside)
        {
            beyond = RoomOf(other);
            if (beyond is null)
            {
                return null;
            }

            if (beyond.Id == room.Id)
            {
                reports.Error(
                    "opening-without-room", $"`{draft.Id}` joins `{room.Id}` to itself", other.Span,
                    "name the room on its other side, or `outside`");
                return null;
            }
        }

        return Choose(draft, room, beyond) is { } wall ? new OpeningToPlace(draft, room, beyond, wall) : null;
    }

    private LaidRoom? RoomOf(NameRef name)
    {
        var named = names.Find(name.Id);
        if (named?.Room is null && named?.What != "room")
        {
            names.ReportUnknown(name.Id, "room", name.Span, n => n.What == "room");
        }

        return named?.Room;
    }

    private OpeningWall? Choose(OpeningDraft draft, LaidRoom room, LaidRoom? beyond)
    {
        var stretches = beyond is null ? walls.ToOutside(room) : walls.Between(room, beyond);
        string pair = beyond is null ? $"`{room.Id}` has no outside wall" : $"`{room.Id}` and `{beyond.Id}` share no wall";
        if (stretches.Count == 0 && beyond is not null && IsToldOfRooms(draft, room, beyond))
        {
            return null;
        }

        if (stretches.Count == 0)
        {
            reports.Error(
                "wall-not-shared",
                pair,
                draft.First.Span.To(draft.Second.Span),
                beyond is null
                    ? "lead it to the room beside it instead"
                    : "an opening joins two rooms that lie side by side; name the room between them, or `outside`");
            return null;
        }

        var sides = stretches.Select(s => s.Side).Distinct().ToList();
        if (draft.Wall is { } wanted)
        {
            // The wall may be named from either room: the east wall of one is the west wall of the other.
            var side = sides.Contains(wanted) || beyond is null ? wanted : wanted.Opposite();
            if (!sides.Contains(side))
            {
                reports.Error(
                    "wall-not-shared", $"{pair} on the {wanted.Word()} side of `{room.Id}`", draft.WallSpan, $"write {Walls(sides)}");
                return null;
            }

            sides = [side];
        }

        if (sides.Count > 1)
        {
            string which = beyond is null
                ? $"`{room.Id}` has more than one outside wall"
                : $"`{room.Id}` and `{beyond.Id}` share more than one wall";
            reports.Error("which-wall", which, draft.First.Span.To(draft.Second.Span), $"say which: {Walls(sides)}");
            return null;
        }

        return new OpeningWall(sides[0], [.. stretches.Where(s => s.Side == sides[0])], draft.Width);
    }

    // Rooms that overlap, or that leave a gap, have no wall in common: the rooms are the mistake, not the opening.
    private bool IsToldOfRooms(OpeningDraft draft, LaidRoom room, LaidRoom beyond)
    {
        if (room.Floor.Boxes.Any(beyond.Floor.Touches))
        {
            return true;
        }

        bool parted = rooms.AreParted(room, beyond);
        if (parted)
        {
            overGaps.Add(new RelatedSpan(draft.First.Span.To(draft.Second.Span), $"`{draft.Id}` is to join `{room.Id}` and `{beyond.Id}`"));
        }

        return parted;
    }

    private static string Walls(IEnumerable<Side> sides) => string.Join(" or ", sides.Order().Select(s => $"`{s.Word()} wall`"));
}

/// <summary>An opening whose wall is known.</summary>
/// <param name="Room">The inside room for shell walls.</param>
/// <param name="Beyond">The other room; null is outside.</param>
internal sealed record OpeningToPlace(OpeningDraft Draft, LaidRoom Room, LaidRoom? Beyond, OpeningWall Wall);
