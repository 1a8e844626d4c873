using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Syntax;
using Floorplan.Model.Flows;
using Floorplan.Model.Rooms;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;

namespace Floorplan.Checks.Rules.File;

internal sealed class Unreachable : Rule
{
    /// <summary>
    /// A step back from the bench edge, so that rounding does not decide on which side of an edge a worker stands. Own assumption.
    /// </summary>
    private const double StepBackMm = 5;

    public override string Name => "unreachable";

    public override RuleGroup Group => RuleGroup.File;

    public override string Says
        => "No walk from outside leads to a worker's place, or a leg of a flow has no way for whoever or whatever moves along it.";

    public override string Why
        => "A place that nobody can get to, or a trolley that does not pass between two benches, is only noticed when the unit stands.";

    public override string Mend => "Add a door or opening, widen the gap, or use a narrower trolley.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("Geometry of the plan: a person needs 450 mm to pass (shoulder breadth of a 95th-percentile man 567 mm, ANSUR II, turned), a "
            + "trolley its width", Origin.OwnAssumption, Force.Measured),
        new("21 CFR 117.20(b)(2), US CFR: adequate, unobstructed aisles, no number", Origin.FromMemory, Force.Law),
    ];

    public override string Bad => """
        plan "Mussel unit"
          units metric
        shell shed 8000 x 3000 x 2500
        room wash "Washing" dry from west to 4000
        room pack "Packing" dry from 4000 to east
        partitions thickness 80
        door d1 wash to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself
        hatch h1 wash to pack, 300 from south, 700 x 500, sill 950
        station table "Packing table" in pack
          size 1500 x 600 x 900
          place against north wall, 1500 from west
          worker south
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        LineChange.After("door d1", "door d2 pack to outside, south wall, 500 from east, 900 x 2050, swings out, closes itself"),
    ];

    public override IReadOnlyList<Cause> FollowsFrom => [.. Cause.AtSameThings("nowhere-to-stand"), .. Cause.Misplaced("outside-shell")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var floor = new WalkableParts(context.Space);
        var cutOff = new HashSet<string>();
        foreach (var room in context.Plan.Stations.Where(s => s.Workers.Count > 0).GroupBy(s => s.Room.Id))
        {
            var stations = room.ToList();
            var lost = stations.Where(s => s.Workers.Any(w => !floor.CanBeReached(s.Room, StepBack(w)))).ToList();
            cutOff.UnionWith(lost.Select(s => s.Id));
            if (lost.Count == stations.Count)
            {
                yield return RoomCutOff(lost);
                continue;
            }

            foreach (var station in lost)
            {
                yield return CheckContext.Find(this, Severity.Error, [station.Id],
                    $"nobody can walk from outside to where a worker of {Named.Of(station)} stands",
                    "clear a gap that a person can pass, or add a door", station.Span, station.Workers[0].Centre.Coordinate);
            }
        }

        // Legs to and from one door are blocked by that door alike: one mistake.
        foreach (var journey in Journey.Of(context.Space.LegRoutes).Where(j => !j.Things.Any(cutOff.Contains)))
        {
            if (journey.Legs.FirstOrDefault(l => l.Blocked is not null) is { } leg)
            {
                yield return CheckContext.Find(
                    this, Severity.Error,
                    [.. journey.Things.Concat(new[] { leg.Leg.From, leg.Leg.To }.OfType<OpeningStop>().Select(o => o.Name)).Distinct()],
                    leg.Blocked!, "widen the way, add a door or opening, or carry it another way", leg.Leg.Span, PlaceOf(leg.Leg));
            }
        }
    }

    private Finding RoomCutOff(List<Station> lost)
    {
        Room room = lost[0].Room;
        return CheckContext.Find(this, Severity.Error, [room.Id, .. lost.Select(s => s.Id)],
            $"nobody can walk from outside to the workers in {Named.Of(room)}: {Named.List(lost.Select(Named.Of))}",
            $"give {Named.Of(room)} a door that people can use, or clear the way to it",
            room.Span, lost[0].Workers[0].Centre.Coordinate);
    }

    private static Coordinate StepBack(WorkerPlace worker)
    {
        var at = worker.Centre.Coordinate;
        return worker.Stands switch
        {
            Side.North => new Coordinate(at.X, at.Y + StepBackMm),
            Side.South => new Coordinate(at.X, at.Y - StepBackMm),
            Side.East => new Coordinate(at.X + StepBackMm, at.Y),
            _ => new Coordinate(at.X - StepBackMm, at.Y),
        };
    }

    private static Coordinate? PlaceOf(Leg leg) => new[] { leg.To, leg.From }.Select(s => s switch
    {
        StationStop station => station.Station.Bounds.Centre.Coordinate,
        OpeningStop opening => opening.Opening.Centre.Coordinate,
        ServiceStop service => service.Service.At.Coordinate,
        RoomStop room => room.Room.Floor.InteriorPoint.Coordinate,
        _ => null,
    }).FirstOrDefault(c => c is not null);
}
