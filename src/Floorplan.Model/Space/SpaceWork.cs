using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Space.Keeping;
using Floorplan.Model.Space.Search;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space;

/// <summary>
/// What <see cref="FloorSpace"/> works out, told of the things of the plan that it was worked out on. Later plans of the same shape share
/// it.
/// </summary>
internal sealed class SpaceWork
{
    private readonly NarrowGap gaps;
    private readonly ReachFinder reach;
    private readonly Generations<(string? From, PlaceKey At, string? To, PlaceKey Goal, double Wide, double High), Route?> found = new();
    private readonly Generations<(string Room, PlaceKey At, Mover Mover, Func<Opening, bool> IsExit), Route?> exits = new();
    private readonly Generations<(string Room, Mover Mover, Func<Opening, bool> IsExit), Route?> farthest = new();
    private readonly Generations<(PathKey Path, double UpTo), (double WidthMm, Coordinate At)> narrowest = new();
    private readonly Generations<(string Station, double Work, PlaceKey Front, Geometry Target, double Height), double> reached = new();
    private ILookup<string, Station>? byRoom;
    private WaysOut? waysOut;

    /// <param name="kept">Of the plans before; null keeps nothing beyond this plan.</param>
    public SpaceWork(Plan plan, KeptSpace? kept)
    {
        Plan = plan;
        Kept = kept;
        Maps = new Maps(plan, kept);
        Standing = new StandingPlaces(plan, Maps);
        gaps = new NarrowGap(plan, Maps);
        reach = new ReachFinder(plan, Maps);
    }

    public Plan Plan { get; }

    public KeptSpace? Kept { get; }

    public Maps Maps { get; }

    public StandingPlaces Standing { get; }

    /// <summary>Begins the next plan of the same shape: answers that the last one did not ask for are forgotten.</summary>
    public void Next()
    {
        found.Next();
        exits.Next();
        farthest.Next();
        narrowest.Next();
        reached.Next();
    }

    public Route? Find(Room? fromRoom, Coordinate from, Room? toRoom, Coordinate to, Mover mover, Func<Opening, bool>? mayPass)
    {
        if (mayPass is not null)
        {
            return Search();
        }

        var key = (fromRoom?.Id, PlaceKey.Of(from), toRoom?.Id, PlaceKey.Of(to), mover.WidthMm, mover.HeightMm);
        return found.Of(key, Search);

        Route? Search()
        {
            var map = Maps.For(mover, mayPass);
            return map.Region(fromRoom)?.Settle(from) is { } start && map.Region(toRoom)?.Settle(to) is { } goal
                ? Routes.Between(map, [start], [goal], mayPass)
                : null;
        }
    }

    public Route? FindExit(Room room, Coordinate from, Mover mover, Func<Opening, bool> isExit)
    {
        var key = (room.Id, PlaceKey.Of(from), mover, isExit);
        return exits.Of(key, Search);

        Route? Search()
        {
            var ways = WaysOut(mover, isExit);
            return ways.HasExit && ways.Map.Region(room)?.Settle(from) is { } start ? ways.From(start) : null;
        }
    }

    public Route? FarthestExit(Room room, Mover mover, Func<Opening, bool> isExit)
    {
        var key = (room.Id, mover, isExit);
        return farthest.Of(key, Search);

        Route? Search()
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
    }

    public (double WidthMm, Coordinate At) NarrowestAlong(Route route, double upToMm)
    {
        var key = (new PathKey(route.Path), upToMm);
        return narrowest.Of(key, () => gaps.Along(route, upToMm));
    }

    public double Reach(Station station, WorkerPlace worker, Geometry target, double targetHeightMm)
    {
        var key = (station.Id, station.WorkHeight.Millimetres, PlaceKey.Of(worker.Front.Coordinate), target, targetHeightMm);
        return reached.Of(key, () => reach.Reach(station, worker, target, targetHeightMm));
    }

    private IEnumerable<Station> StationsIn(Room room) => (byRoom ??= Plan.Stations.ToLookup(s => s.Room.Id))[room.Id];

    /// <summary>Kept for the next question, which is mostly about the same mover and the same exits.</summary>
    private WaysOut WaysOut(Mover mover, Func<Opening, bool> isExit)
    {
        var map = Maps.For(mover, isExit);
        return waysOut is { } known && known.Map == map && known.IsExit == isExit ? known : waysOut = new WaysOut(map, isExit);
    }

    /// <summary>A place by its numbers: coordinates are changeable objects.</summary>
    private readonly record struct PlaceKey(double X, double Y)
    {
        public static PlaceKey Of(Coordinate c) => new(c.X, c.Y);
    }

    /// <summary>A path by its object, which later plans share.</summary>
    private readonly struct PathKey(LineString path) : IEquatable<PathKey>
    {
        private readonly LineString path = path;

        public bool Equals(PathKey other) => ReferenceEquals(path, other.path);

        public override bool Equals(object? obj) => obj is PathKey other && Equals(other);

        public override int GetHashCode() => System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(path);
    }
}
