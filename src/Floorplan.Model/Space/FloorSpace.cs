using Floorplan.Model.Flows;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using Floorplan.Model.Space.Keeping;
using Floorplan.Model.Space.Legs;
using Floorplan.Model.Space.Meetings;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space;

/// <summary>
/// Answers about free floor, ways and reach on one plan, from exact geometry. Everything is in plan millimetres. Answers are computed when
/// first asked for and kept; the object is for one thread.
/// </summary>
/// <remarks>
/// Openings are judged by functions of the caller, such as which ones are exits. Such a function is about what an opening is (its kind, its
/// rooms, its sizes), never about its label, its place in the text, or which object it is: answers are kept by the function.
/// </remarks>
public sealed class FloorSpace
{
    private readonly SpaceWork work;
    private readonly MovedThings? moved;
    private IReadOnlyList<LegRoute>? legRoutes;
    private IReadOnlyList<Meeting>? meetings;

    /// <summary>Works everything out.</summary>
    public FloorSpace(Plan plan)
    {
        Plan = plan;
        work = new SpaceWork(plan, null);
    }

    /// <summary>Takes over what an earlier space worked out and still holds; the answers are those of a new space.</summary>
    /// <param name="plan">The plan as it is now.</param>
    /// <param name="before">Of any plan; it must not be asked any more. Null when there was none.</param>
    public FloorSpace(Plan plan, FloorSpace? before)
    {
        Plan = plan;
        if (before is not null && PlanShape.SameForStanding(before.work.Plan, plan))
        {
            work = before.work;
            work.Next();
            moved = new MovedThings(work.Plan, plan);
            legRoutes = before.legRoutes is { } routes && PlanShape.SameLegs(before.Plan, plan)
                ? Moved(routes, new MovedThings(before.Plan, plan))
                : null;
            return;
        }

        var kept = before?.work.Kept ?? new KeptSpace();
        kept.Next();
        work = new SpaceWork(plan, kept);
    }

    public Plan Plan { get; }

    /// <summary>Whether the floor is taken over from the space before: nothing of what it looks at differs.</summary>
    public bool IsKept => moved is not null;

    /// <summary>The real route of every leg of every flow, in order.</summary>
    public IReadOnlyList<LegRoute> LegRoutes => legRoutes ??= Routed();

    /// <summary>Every pair of legs of different flows that share floor, whatever their period.</summary>
    public IReadOnlyList<Meeting> Meetings => meetings ??= MeetingFinder.Find(LegRoutes);

    /// <summary>Where the middle of a mover can be inside a room: the room less obstacles of its height, less half its width.</summary>
    public Geometry FreeFloor(Room room, Mover mover) =>
        work.Maps.For(mover).Region(room)?.Geometry ?? Shape.Factory.CreateMultiPolygon();

    /// <summary>
    /// Where the middle of a mover can be on the ground round the shell, which is how ways lead from one outer door to another.
    /// </summary>
    internal Geometry FreeGround(Mover mover) => work.Maps.For(mover).Region(null)?.Geometry ?? Shape.Factory.CreateMultiPolygon();

    /// <summary>
    /// The shortest way from one place to another (null room is outside), or null. Start and end are moved to the nearest free floor of
    /// their room.
    /// </summary>
    /// <param name="mayPass">Which openings may be used; null allows all walkable ones.</param>
    public Route? Find(Room? fromRoom, Coordinate from, Room? toRoom, Coordinate to, Mover mover, Func<Opening, bool>? mayPass = null) =>
        Moved(work.Find(fromRoom, from, toRoom, to, mover, mayPass));

    /// <summary>The shortest way out of the building through any opening that <paramref name="isExit"/> takes, or null.</summary>
    public Route? FindExit(Room room, Coordinate from, Mover mover, Func<Opening, bool> isExit) =>
        Moved(work.FindExit(room, from, mover, isExit));

    /// <summary>
    /// The longest of the shortest ways out from anywhere in a room, or null when some part has no way; from the farthest standing
    /// place.
    /// </summary>
    public Route? FarthestExit(Room room, Mover mover, Func<Opening, bool> isExit) => Moved(work.FarthestExit(room, mover, isExit));

    public (double WidthMm, Coordinate At) NarrowestAlong(Route route, double upToMm) => work.NarrowestAlong(route, upToMm);

    /// <summary>
    /// The straight distance in mm from a worker's shoulder line (middle of the standing place, at its bench edge) to
    /// the nearest point of a target, going round things taller than work height that stand between; infinity when enclosed.
    /// </summary>
    public double Reach(Station station, WorkerPlace worker, Geometry target, double targetHeightMm) =>
        work.Reach(station, worker, target, targetHeightMm);

    /// <summary>
    /// Where a person stands to use a thing: its worker place, else the nearest free floor in front of it; null when there is none.
    /// </summary>
    public Coordinate? StandingAt(Stop stop, Room? inRoom = null) => work.Standing.At(stop, inRoom);

    /// <summary>Stations, fixtures and other solids whose footprint comes within a box, by spatial index.</summary>
    public IReadOnlyList<Station> StationsNear(Envelope envelope) =>
        [.. work.Maps.Obstacles.Near(envelope).Select(o => moved?.Of(o.Station) ?? o.Station).OrderBy(s => s.Item)];

    private Route? Moved(Route? route) => moved is null ? route : moved.Of(route);

    /// <summary>Legs may differ on a floor that is taken over; its openings are then still those of the plan that it was made on.</summary>
    private IReadOnlyList<LegRoute> Routed()
    {
        var routes = new LegRouter(Plan, work.Maps, work.Standing).RouteAll();
        return moved is null ? routes : Moved(routes, moved);
    }

    private IReadOnlyList<LegRoute> Moved(IReadOnlyList<LegRoute> routes, MovedThings things)
    {
        var all = new List<LegRoute>(routes.Count);
        foreach (var flow in Plan.Flows)
        {
            foreach (var leg in flow.Legs)
            {
                all.Add(routes[all.Count] with { Flow = flow, Leg = leg, Route = things.Of(routes[all.Count].Route) });
            }
        }

        return all;
    }
}
