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

/// <summary>Free floor, ways and reach on one plan, from exact geometry. Built as it is asked; for one thread.</summary>
public sealed class FloorSpace : IFloorSpace
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

    public IReadOnlyList<LegRoute> LegRoutes => legRoutes ??= new LegRouter(Plan, maps, standing).RouteAll();

    public IReadOnlyList<Meeting> Meetings => meetings ??= MeetingFinder.Find(LegRoutes);

    public Geometry FreeFloor(Room room, Mover mover) => maps.For(mover).Region(room)?.Geometry ?? Shape.Factory.CreateMultiPolygon();

    /// <summary>Where the middle of a mover can be on the ground round the shell, which is how ways lead from one outer door to another.</summary>
    internal Geometry FreeGround(Mover mover) => maps.For(mover).Region(null)?.Geometry ?? Shape.Factory.CreateMultiPolygon();

    public Route? Find(Room? fromRoom, Coordinate from, Room? toRoom, Coordinate to, Mover mover, Func<Opening, bool>? mayPass = null)
    {
        var map = maps.For(mover, mayPass);
        return map.Region(fromRoom)?.Settle(from) is { } start && map.Region(toRoom)?.Settle(to) is { } goal
            ? Routes.Between(map, [start], [goal], mayPass)
            : null;
    }

    public Route? FindExit(Room room, Coordinate from, Mover mover, Func<Opening, bool> isExit)
    {
        var ways = WaysOut(mover, isExit);
        return ways.HasExit && ways.Map.Region(room)?.Settle(from) is { } start ? ways.From(start) : null;
    }

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

    public double Reach(Station station, WorkerPlace worker, Geometry target, double targetHeightMm) =>
        reach.Reach(station, worker, target, targetHeightMm);

    public Coordinate? StandingAt(Stop stop, Room? inRoom = null) => standing.At(stop, inRoom);

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
