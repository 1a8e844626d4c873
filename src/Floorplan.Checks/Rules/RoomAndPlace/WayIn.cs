using Floorplan.Checks.Framework;
using Floorplan.Language.Syntax;
using Floorplan.Model;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using NetTopologySuite.Geometries;

namespace Floorplan.Checks.Rules.RoomAndPlace;

/// <summary>
/// Whether a solid can be brought from outside to a place in a room: through openings wide and high enough, round the
/// corner behind each, and through the narrows of rooms that others are carved out of. Other things do not count: whoever
/// sets up the unit carries in the farthest first.
/// </summary>
internal sealed class WayIn(Plan plan)
{
    private const int AnglesTried = 45;

    private readonly ILookup<string, Opening> byRoom = plan.Openings
        .Where(o => o.IsWalkable || o.Kind == OpeningKind.CargoDoor)
        .SelectMany(o => new[] { o.RoomA, o.RoomB }.OfType<Room>().Select(r => (r.Id, Opening: o)))
        .ToLookup(p => p.Id, p => p.Opening);

    private readonly Dictionary<(string Room, double Broad), IReadOnlyList<Geometry>> passable = [];
    private readonly Dictionary<(string Room, int Part, Solid Solid), bool> known = [];

    public bool Fits(Solid solid, Room room, Coordinate at)
    {
        int part = PartAt(room, solid.Broad, Shape.Factory.CreatePoint(at));
        if (!known.TryGetValue((room.Id, part, solid), out bool fits))
        {
            fits = Search(solid, room, part);
            known[(room.Id, part, solid)] = fits;
        }

        return fits;
    }

    /// <summary>The opening that decides: the narrowest on the widest way to a room; null when no way leads there.</summary>
    public Opening? Decisive(Room room)
    {
        var best = new Dictionary<string, Opening>();
        var queue = new PriorityQueue<Room, double>();
        queue.Enqueue(room, 0);
        var seen = new HashSet<string>();
        Opening? widest = null;
        while (queue.TryDequeue(out var here, out _))
        {
            if (!seen.Add(here.Id))
            {
                continue;
            }

            foreach (var opening in byRoom[here.Id])
            {
                var narrowest = best.TryGetValue(here.Id, out var before) && before.Width < opening.Width ? before : opening;
                var next = Other(opening, here);
                if (next is null)
                {
                    widest = widest is null || narrowest.Width > widest.Width ? narrowest : widest;
                }
                else if (!seen.Contains(next.Id) && (!best.TryGetValue(next.Id, out var known) || narrowest.Width > known.Width))
                {
                    best[next.Id] = narrowest;
                    queue.Enqueue(next, -narrowest.Width.Millimetres);
                }
            }
        }

        return widest;
    }

    private bool Search(Solid solid, Room room, int part)
    {
        var seen = new HashSet<(string, int)> { (room.Id, part) };
        var queue = new Queue<(Room Room, int Part)>([(room, part)]);
        while (queue.TryDequeue(out var here))
        {
            foreach (var opening in byRoom[here.Room.Id].Where(o => Passes(solid, o) && PartAt(here.Room, solid.Broad, o.Reveal) == here.Part))
            {
                var next = Other(opening, here.Room);
                if (next is null)
                {
                    return true;
                }

                int nextPart = PartAt(next, solid.Broad, opening.Reveal);
                if (seen.Add((next.Id, nextPart)))
                {
                    queue.Enqueue((next, nextPart));
                }
            }
        }

        return false;
    }

    // Held at an angle to the wall, a box needs less depth behind a door but more of the door's width; straight in needs its whole length.
    private static bool Passes(Solid solid, Opening opening)
    {
        if (solid.High > opening.Height.Millimetres || solid.Broad > opening.Width.Millimetres)
        {
            return false;
        }

        bool alongX = opening.Wall is Side.North or Side.South;
        var reveal = opening.Reveal.EnvelopeInternal;
        double thick = alongX ? reveal.Height : reveal.Width;
        for (int i = 1; i <= AnglesTried; i++)
        {
            double angle = Math.PI / 2 * i / AnglesTried;
            if (opening.Width.Millimetres * Math.Sin(angle) - thick * Math.Cos(angle) < solid.Broad - Touch.ToleranceMm)
            {
                continue;
            }

            double deep = solid.Long * Math.Sin(angle) + solid.Broad * Math.Cos(angle);
            double aside = solid.Long * Math.Cos(angle) + solid.Broad * Math.Sin(angle);
            if (HasRoom(opening, opening.RoomA, deep, aside, alongX) && HasRoom(opening, opening.RoomB, deep, aside, alongX))
            {
                return true;
            }
        }

        return false;
    }

    private static bool HasRoom(Opening opening, Room? room, double deep, double aside, bool alongX)
    {
        if (room is null)
        {
            return true;
        }

        var floor = room.Floor.EnvelopeInternal;
        var reveal = opening.Reveal.EnvelopeInternal;
        double left = alongX ? reveal.MaxX - floor.MinX : reveal.MaxY - floor.MinY;
        double right = alongX ? floor.MaxX - reveal.MinX : floor.MaxY - reveal.MinY;
        return Depth(opening, room) >= deep - Touch.ToleranceMm && Math.Max(left, right) >= aside - Touch.ToleranceMm;
    }

    private static double Depth(Opening opening, Room room)
    {
        var floor = room.Floor.EnvelopeInternal;
        var into = Sides.Into(opening, room);
        var ahead = Sides.InFrontOf(opening, into, Math.Max(floor.Width, floor.Height) + 1).EnvelopeInternal;
        var line = into is Side.North or Side.South
            ? Shape.Factory.CreateLineString([new(ahead.Centre.X, ahead.MinY), new(ahead.Centre.X, ahead.MaxY)])
            : Shape.Factory.CreateLineString([new(ahead.MinX, ahead.Centre.Y), new(ahead.MaxX, ahead.Centre.Y)]);
        var inside = line.Intersection(room.Floor);
        return Enumerable.Range(0, inside.NumGeometries)
            .Select(inside.GetGeometryN)
            .Where(g => g.Distance(opening.Reveal) <= Touch.ToleranceMm)
            .Select(g => g.Length)
            .DefaultIfEmpty(0)
            .Max();
    }

    /// <summary>Which part of a room's floor, less half a breadth all round, belongs to a place; a plain rectangle has one.</summary>
    private int PartAt(Room room, double broad, Geometry place)
    {
        var parts = Parts(room, broad);
        int nearest = 0;
        double least = double.MaxValue;
        for (int i = 0; i < parts.Count && parts.Count > 1; i++)
        {
            double distance = parts[i].Distance(place);
            if (distance < least)
            {
                (least, nearest) = (distance, i);
            }
        }

        return nearest;
    }

    private IReadOnlyList<Geometry> Parts(Room room, double broad)
    {
        if (room.Floor.IsRectangle)
        {
            return [room.Floor];
        }

        if (!passable.TryGetValue((room.Id, broad), out var parts))
        {
            var free = room.Floor.Buffer(-(broad / 2 - Touch.ToleranceMm));
            parts = [.. Enumerable.Range(0, free.NumGeometries).Select(free.GetGeometryN).Where(g => !g.IsEmpty)];
            passable[(room.Id, broad)] = parts;
        }

        return parts;
    }

    private static Room? Other(Opening opening, Room room) => opening.RoomA?.Id == room.Id ? opening.RoomB : opening.RoomA;
}
