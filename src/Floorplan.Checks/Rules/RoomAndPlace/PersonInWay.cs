using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Syntax;
using Floorplan.Model.Flows;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Space;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;

namespace Floorplan.Checks.Rules.RoomAndPlace;

/// <summary>Working places in front of doorways that others come through while work goes on.</summary>
internal sealed class PersonInWay : Rule
{
    /// <summary>Who stands farther off than a person is deep lets others turn in; own assumption.</summary>
    private const double DepthMm = 450;

    /// <summary>Beside a person at work a load needs this much more than its own width; own assumption.</summary>
    private const double ElbowMm = 200;

    public override string Name => "person-in-way";

    public override RuleGroup Group => RuleGroup.RoomAndPlace;

    public override string Says
        => "Somebody works in front of a doorway that others come through in working time, and beside the person too little of the "
            + "doorway is left for what comes through.";

    public override string Why
        => "Whoever stands in a doorway with a knife or a hot tray is pushed by each trolley, and steps aside hundreds of times a day.";

    public override string Mend => "Let the person stand on another side of the station, move the station along, or move the door.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("a person within 450 mm of a doorway stands in it, and beside a person a load needs 200 mm more than its "
            + "width", Origin.OwnAssumption),
    ];

    public override IReadOnlyList<Cause> FollowsFrom =>
        [.. Cause.AtSameThings("door-blocked", "nowhere-to-stand"), .. Cause.Misplaced("outside-shell")];

    public override string Bad => """
        plan "Crab room"
          units metric
        shell shed 6000 x 3000 x 2500
        room boil "Boiling" dirty from west to east
        door d1 boil to outside, south wall, 1000 from west, 900 x 2050, swings out, closes itself
        drain fd1 floor in boil, 4000 from west, centred, 100
        sink s1 hand in boil, 400 x 350, against south wall, 3000 from west
        station scale "Scale" in boil
          size 600 x 500 x 900
          place 1150 from west, 650 from south
          worker south
        station tank "Holding tank" in boil
          size 1200 x 600 x 800
          place against north wall, 3000 from west
          worker south
        flow product
          outside -> d1 -> tank   by hand
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("place 1150", "  place against north wall, 1000 from west"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var widest = context.Space.LegRoutes
            .Where(l => l.Route is not null && l.Leg.Period == Period.During)
            .SelectMany(l => l.Route!.Openings.Select(o => (Door: o, Leg: l)))
            .Where(p => p.Door.IsWalkable)
            .GroupBy(p => p.Door.Id)
            .Select(g => (g.First().Door, Legs: g.Select(p => p.Leg).ToList()));
        foreach (var (door, legs) in widest)
        {
            foreach (var room in new[] { door.RoomA, door.RoomB }.OfType<Room>())
            {
                var into = Sides.Into(door, room);
                var front = Sides.InFrontOf(door, into, DepthMm);
                foreach (var station in context.Plan.Stations.Where(s => s.Room.Id == room.Id && s.Workers.Count > 0))
                {
                    if (station.Workers.FirstOrDefault(w => Touch.Shared(front, w.Floor) is not null) is { } worker
                        && ByOthers(legs, station) is { } others
                        && Left(front, worker.Floor, into) is var left && left < others.Mover.WidthMm + ElbowMm)
                    {
                        yield return Found(context, door, station, worker, others, left);
                        break;
                    }
                }
            }
        }
    }

    /// <summary>The widest of those that come through to another place; who comes to this one finds its worker away from the
    /// door.</summary>
    private static LegRoute? ByOthers(List<LegRoute> legs, Station station)
        => legs.Where(l => !IsAt(l.Leg.From, station) && !IsAt(l.Leg.To, station)).MaxBy(l => l.Mover.WidthMm);

    private static bool IsAt(Stop stop, Station station) => stop is StationStop s && s.Station.Id == station.Id;

    /// <summary>The wider part of the doorway that is left beside the person.</summary>
    private static double Left(Polygon front, Polygon place, Side into)
    {
        var (door, person) = (front.EnvelopeInternal, place.EnvelopeInternal);
        return into is Side.North or Side.South
            ? Math.Max(person.MinX - door.MinX, door.MaxX - person.MaxX)
            : Math.Max(person.MinY - door.MinY, door.MaxY - person.MaxY);
    }

    private Finding Found(
        CheckContext context, Opening door, Station station, WorkerPlace worker, LegRoute others, double left)
        => CheckContext.Find(this, Severity.Warning, [station.Id, door.Id],
            $"who works at {Named.Of(station)} stands in front of {Named.Of(door)}, and {context.Text(Math.Max(0, left))} of the doorway "
                + $"is left for what goes from {Named.Of(others.Leg.From)} to {Named.Of(others.Leg.To)}",
            $"let the person stand on another side of {Named.Of(station)}, or move it along the wall", station.Span,
            worker.Centre.Coordinate) with
        { Measured = Math.Max(0, left) };
}
