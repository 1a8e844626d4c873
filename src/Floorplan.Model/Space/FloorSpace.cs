using Floorplan.Model.Flows;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using Floorplan.Model.Space.Legs;
using Floorplan.Model.Space.Meetings;
using Floorplan.Model.Space.Search;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space;

/// <summary>
/// Answers about free floor, ways and reach on one plan, from exact geometry. Everything is in plan millimetres. Answers are computed when
/// first asked for and kept; the object is for one thread.
/// </summary>
public sealed class FloorSpace
{
    private readonly Maps maps;
    private readonly StandingPlaces standing;
    private readonly NarrowGap gaps;
    private readonly ReachFinder reach;
    private IReadOnlyList<LegRoute>? legRoutes;
    private IReadOnlyList<Meeting>? meetings;
    private ILookup<string, Station>? byRoom;
    private WaysOut? waysOut;

    public FloorSpace(Plan plan)
    {
        Plan = plan;
        maps = new Maps(plan);
        standing = new StandingPlaces(plan, maps);
        gaps = new NarrowGap(plan, maps);
        reach = new ReachFinder(plan, maps);
    }

    public Plan Plan { get; }

    /// <summary>The real route of every leg of every flow, in order.</summary>
    public IReadOnlyList<LegRoute> LegRoutes => legRoutes ??= new LegRouter(Plan, maps, standing).RouteAll();

    /// <summary>Every pair of legs of different flows that share floor, whatever their period.</summary>
    public IReadOnlyList<Meeting> Meetings => meetings ??= MeetingFinder.Find(LegRoutes);

    /// <summary>Where the middle of a mover can be inside a room: the room less obstacles of its height, less half its width.</summary>
    public Geometry FreeFloor(Room room, Mover mover) => maps.For(mover).Region(room)?.Geometry ?? Shape.Factory.CreateMultiPolygon();

    /// <summary>
    /// Where the middle of a mover can be on the ground round the shell, which is how ways lead from one outer door to another.
    /// </summary>
    internal Geometry FreeGround(Mover mover) => maps.For(mover).Region(null)?.Geometry ?? Shape.Factory.CreateMultiPolygon();

    /// <summary>
    /// The shortest way from one place to another (null room is outside), or null. Start and end are moved to the nearest free floor of
    /// their room.
    /// </summary>
    /// <param name="mayPass">Which openings may be used; null allows all walkable ones.</param>
    public Route? Find(Room? fromRoom, Coordinate from, Room? toRoom, Coordinate to, Mover mover, Func<Opening, bool>? mayPass = null)
    {
        var map = maps.For(mover, mayPass);
        return map.Region(fromRoom)?.Settle(from) is { } start && map.Region(toRoom)?.Settle(to) is { } goal
            ? Routes.Between(map, [start], [goal], mayPass)
            : null;
    }

    /// <summary>The shortest way out of the building through any opening that <paramref name="isExit"/> takes, or null.</summary>
    public Route? FindExit(Room room, Coordinate from, Mover mover, Func<Opening, bool> isExit)
    {
        var ways = WaysOut(mover, isExit);
        return ways.HasExit && ways.Map.Region(room)?.Settle(from) is { } start ? ways.From(start) : null;
    }

    /// <summary>
    /// The longest of the shortest ways out from anywhere in a room, or null when some part has no way; from the farthest standing
    /// place.
    /// </summary>
    public Route? FarthestExit(Room room, Mover mover, Func<Opening, bool> isExit)
    {
        var ways = WaysOut(mover, isExit);
        if (!ways.HasExit || ways.Map.Region(room) is not { } region)
        {
            return null;
        }

        var workers = StationsIn(room).SelectMany(s => s.Workers).Select(w => w.Centre.Coordinate).ToList();
        var (point, distance) = new FarthestSpot(ways, region).Find(workers);
        return point is null || double.IsInfinity(distance) ? null : FindExit(room, point, mover, isExit);
    }

    public (double WidthMm, Coordinate At) NarrowestAlong(Route route, double upToMm) => gaps.Along(route, upToMm);

    /// <summary>
    /// The straight distance in mm from a worker's shoulder line (middle of the standing place, at its bench edge) to
    /// the nearest point of a target, going round things taller than work height that stand between; infinity when enclosed.
    /// </summary>
    public double Reach(Station station, WorkerPlace worker, Geometry target, double targetHeightMm) =>
        reach.Reach(station, worker, target, targetHeightMm);

    /// <summary>
    /// Where a person stands to use a thing: its worker place, else the nearest free floor in front of it; null when there is none.
    /// </summary>
    public Coordinate? StandingAt(Stop stop, Room? inRoom = null) => standing.At(stop, inRoom);

    /// <summary>Stations, fixtures and other solids whose footprint comes within a box, by spatial index.</summary>
    public IReadOnlyList<Station> StationsNear(Envelope envelope) =>
        [.. maps.Obstacles.Near(envelope).Select(o => o.Station).OrderBy(s => s.Item)];

    private IEnumerable<Station> StationsIn(Room room) => (byRoom ??= Plan.Stations.ToLookup(s => s.Room.Id))[room.Id];

    /// <summary>Kept for the next question, which is mostly about the same mover and the same exits.</summary>
    private WaysOut WaysOut(Mover mover, Func<Opening, bool> isExit)
    {
        var map = maps.For(mover, isExit);
        return waysOut is { } known && known.Map == map && known.IsExit == isExit ? known : waysOut = new WaysOut(map, isExit);
    }
}
