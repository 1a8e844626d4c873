using Floorplan.Model;
using Floorplan.Model.Graphs;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using Floorplan.Model.Space;
using Floorplan.Model.Space.Turning;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;

namespace Floorplan.Sizing.CarryingIn;

/// <summary>
/// Whether a solid can be brought from outside to its place: through openings wide and high enough, through the narrows of rooms
/// that others are carved out of, and slid and turned round every corner on the way. Other things do not count: whoever sets up the
/// unit carries in the farthest first.
/// </summary>
internal sealed class WayIn(Plan plan, Effort effort, bool quickly)
{
    /// <summary>So many walls of a plan are tried left open; own bound.</summary>
    private const int MostWalls = 6;

    private readonly ILookup<string, Opening> byRoom = plan.Openings
        .Where(o => o.IsPassage)
        .SelectMany(o => new[] { o.RoomA, o.RoomB }.OfType<Room>().Select(r => (r.Id, Opening: o)))
        .ToLookup(p => p.Id, p => p.Opening);

    private readonly Dictionary<string, Room> rooms = plan.Rooms.ToDictionary(r => r.Id);
    private readonly Dictionary<(string Room, double Broad), IReadOnlyList<Geometry>> passable = [];
    private readonly Dictionary<(string Room, int Part, Solid Solid), bool> known = [];

    private readonly HashSet<(string Room, int Part, Solid Solid)> turned = [];
    private readonly Dictionary<(string Station, Solid Solid), bool> stuck = [];
    private readonly Dictionary<string, WayIn> without = [];
    private CarryTurn? turn;
    private OutField? field;

    /// <param name="quickly">Whether quick looks come before searches.</param>
    public WayIn(Plan plan, bool quickly)
        : this(plan, CarryTurn.NewEffort(), quickly)
    {
    }

    public CarryTurn Turn => turn ??= new CarryTurn(plan, effort, quickly);

    /// <summary>
    /// Whether all openings on some way are wide and high enough, and no narrows of a room are too narrow; not whether it turns.
    /// </summary>
    /// <param name="solid">The thing as it stands, or on one of its sides.</param>
    public bool PassesDoors(Station thing, Solid solid)
    {
        var key = Key(thing, solid);
        if (!known.TryGetValue(key, out bool passes))
        {
            known[key] = passes = Search(solid, thing.Room, key.Part);
        }

        return passes;
    }

    public bool Fits(Station thing, Solid solid)
        => PassesDoors(thing, solid) && (turned.Contains(Key(thing, solid)) || Turns(thing, solid));

    /// <summary>Upright, or else on one of its sides.</summary>
    public bool FitsSomehow(Station thing) => Solid.SidesOf(thing).Any(side => Fits(thing, side));

    /// <summary>Takes note that a thing was found to turn; another like it does so as well from the same part of the room.</summary>
    public void NoteTurned(Station thing, Solid solid) => turned.Add(Key(thing, solid));

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

    /// <summary>
    /// The opening whose wall is best left open until a thing that does not fit is in its place: a partition if that is enough, or else a
    /// wall of the shell; where leaving one wall open is not enough, or none is found, the one that decides. Null when no way leads
    /// there at all.
    /// </summary>
    public Opening? LeftOpen(Station thing)
    {
        var solid = Solid.Of(thing);
        var decisive = Decisive(thing.Room);
        return decisive is null
            ? null
            : byRoom[thing.Room.Id].Prepend(decisive).Distinct().OrderBy(o => o.InShell).FirstOrDefault(o => PassesWithout(o, thing, solid))
                ?? decisive;
    }

    private bool PassesWithout(Opening wall, Station thing, Solid solid)
    {
        if (!without.TryGetValue(wall.Id, out var way) && without.Count < MostWalls)
        {
            without[wall.Id] = way = new WayIn(WallLeftOut.Of(plan, wall), effort, quickly);
        }

        return way?.Fits(thing, solid) == true;
    }

    private bool Turns(Station thing, Solid solid)
    {
        if (thing.Diameter is not null && solid == Solid.Of(thing))
        {
            return true;
        }

        if (!stuck.TryGetValue((thing.Id, solid), out bool isStuck))
        {
            stuck[(thing.Id, solid)] = isStuck = IsStuck(thing, solid);
            if (!isStuck)
            {
                NoteTurned(thing, solid);
            }
        }

        return !isStuck;
    }

    private bool IsStuck(Station thing, Solid solid)
    {
        var walls = new SolidEdges(SolidEdges.OfWalls(plan, o => o.IsPassage && solid.Passes(o)));
        if (solid == Solid.Of(thing) && Turn.OutSquare(walls, thing, CarryTurn.Alone))
        {
            return false;
        }

        // Nothing to start from is a thing placed into a wall, which is another mistake.
        var moved = Turn.Out(walls, field ??= Turn.Grid.WidestOut([]), thing, solid, CarryTurn.Alone);
        return !moved.Goes && moved.Nearest is not null;
    }

    private (string Room, int Part, Solid Solid) Key(Station thing, Solid solid) =>
        (thing.Room.Id, PartAt(thing.Room, solid.Broad, Shape.Factory.CreatePoint(thing.Bounds.Centre.Coordinate)), solid);

    private bool Search(Solid solid, Room room, int part) => BreadthFirst
        .Steps<(string Id, int Part)>([(room.Id, part)], here => Next(solid, here.Id, here.Part))
        .Any(step => step.To.Id == RoomWays.Outside);

    private IEnumerable<(string Id, int Part)> Next(Solid solid, string id, int part)
    {
        foreach (var opening in byRoom[id].Where(o => solid.Passes(o) && PartAt(rooms[id], solid.Broad, o.Reveal) == part))
        {
            var next = Other(opening, rooms[id]);
            yield return (RoomWays.IdOf(next), next is null ? 0 : PartAt(next, solid.Broad, opening.Reveal));
        }
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
