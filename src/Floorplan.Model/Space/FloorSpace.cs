using Floorplan.Model.Flows;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using Floorplan.Model.Space.Free;
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
        var map = maps.For(mover, isExit);
        return map.Region(room)?.Settle(from) is { } start ? Routes.ToNearest(map, start, Exits(map, isExit), OnlyOutBy(isExit)) : null;
    }

    public Route? FarthestExit(Room room, Mover mover, Func<Opening, bool> isExit)
    {
        var map = maps.For(mover, isExit);
        var exits = Exits(map, isExit);
        if (exits.Count == 0 || map.Region(room) is not { } region)
        {
            return null;
        }

        var workers = Plan.Stations.Where(s => s.Room.Id == room.Id).SelectMany(s => s.Workers).Select(w => w.Centre.Coordinate).ToList();
        var (point, distance) = new FarthestSpot(map, region, OnlyOutBy(isExit)).From(exits, workers);
        return point is null || double.IsInfinity(distance) ? null : FindExit(room, point, mover, isExit);
    }

    public (double WidthMm, Coordinate At) NarrowestAlong(Route route, double upToMm) => gaps.Along(route, upToMm);

    public double Reach(Station station, WorkerPlace worker, Geometry target, double targetHeightMm) =>
        reach.Reach(station, worker, target, targetHeightMm);

    public Coordinate? StandingAt(Stop stop, Room? inRoom = null) => standing.At(stop, inRoom);

    public IReadOnlyList<Station> StationsNear(Envelope envelope) =>
        [.. maps.Obstacles.Near(envelope).Select(o => o.Station).OrderBy(s => s.Item)];

    private static List<FreePlace> Exits(FloorMap map, Func<Opening, bool> isExit) =>
        [.. map.Open.Where(p => p.LeadsOut && isExit(p.Opening)).Select(map.JustOutside).OfType<FreePlace>()];

    /// <summary>Inner openings are all open; the outside is reached only through an exit.</summary>
    private static Func<Opening, bool> OnlyOutBy(Func<Opening, bool> isExit) => o => (o.RoomA is not null && o.RoomB is not null) || isExit(o);
}
