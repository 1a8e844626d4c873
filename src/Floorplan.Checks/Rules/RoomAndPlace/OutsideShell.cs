using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Text;
using Floorplan.Model.Rooms;
using Floorplan.Model.Services;
using Floorplan.Model.Shapes;
using Floorplan.Model.Space;
using Floorplan.Model.Stations;
using NetTopologySuite.Algorithm.Distance;
using NetTopologySuite.Geometries;

namespace Floorplan.Checks.Rules.RoomAndPlace;

internal sealed class OutsideShell : Rule
{
    public override string Name => "outside-shell";

    public override RuleGroup Group => RuleGroup.RoomAndPlace;

    public override string Says => "A thing or a room reaches beyond the finished faces of the shell, or a thing is taller than its room.";

    public override string Why
        => "Linings and floor build-up make the box smaller than its steel. A bench drawn into the lining, or a rack taller than "
        + "the finished ceiling, is found out on the day it arrives.";

    public override string Mend => "Move the thing in, choose a smaller one, or thin the lining.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new(
            "Geometry of the plan: two solids cannot share one place; finished faces follow from the shell and its lining",
            Origin.OwnAssumption, Force.Measured),
        new("ISO 668:2020, least inside sizes of containers", Origin.FromMemory, Force.Standard),
    ];

    public override string Bad => """
        plan "Eel shed"
          units metric
        shell shed 6000 x 3000 x 2600
        room prep "Preparation" clean from west to east
        door d1 prep to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself
        drain fd1 floor in prep, 4500 from west, centred, 100
        station bench "Skinning bench" in prep
          size 1800 x 700 x 900
          place 2600 from south, 2000 from west
        """;

    public override IReadOnlyList<LineChange> Mended => [new("place 2600", "  place against north wall, 2000 from west")];

    public override IEnumerable<Finding> Check(CheckContext context)
        => context.Plan.Rooms.SelectMany(r => OfRoom(context, r))
            .Concat(context.Plan.Stations.SelectMany(s => OfStation(context, s)))
            .Concat(context.Plan.Services.SelectMany(p => OfService(context, p)));

    private IEnumerable<Finding> OfRoom(CheckContext context, Room room)
    {
        if (Touch.Beyond(room.Floor, context.Plan.Shell.Finished) is { } beyond)
        {
            double by = HowFar(beyond, context.Plan.Shell.Finished);
            yield return Found([room.Id], by, $"{Named.Of(room)} reaches {context.Text(by)} beyond the finished faces of the shell",
                $"make it smaller or move it in by {context.Text(by)}", room.Span, beyond.InteriorPoint.Coordinate);
        }
    }

    private IEnumerable<Finding> OfStation(CheckContext context, Station station)
    {
        var shell = context.Plan.Shell;
        if (Touch.Beyond(station.Footprint, shell.Finished) is { } beyond)
        {
            double by = HowFar(beyond, shell.Finished);
            yield return Found([station.Id], by, $"{Named.Of(station)} stands {context.Text(by)} beyond the finished face of the shell",
                $"move it in by {context.Text(by)}", station.Span, station.Bounds.Centre.Coordinate) with
            { Misplaced = true };
        }

        double over = (station.Top - station.Room.CeilingHeight).Millimetres;
        if (over > Touch.ToleranceMm)
        {
            string lower = station.Bottom.Nanometres > 0 ? "hang it lower" : "choose a lower one";
            yield return Found([station.Id, station.Room.Id], over,
                $"{Named.Of(station)} reaches {context.Text(station.Top)} high, {context.Text(over)} above the finished ceiling of "
                    + $"{Named.Of(station.Room)} at {context.Text(station.Room.CeilingHeight)}",
                $"{lower} by {context.Text(over)}, or thin the ceiling lining", station.Span, station.Bounds.Centre.Coordinate);
        }
    }

    private IEnumerable<Finding> OfService(CheckContext context, ServicePoint point)
    {
        // Points sit on the finished face or behind it in the lining; beyond the outside they are outdoors.
        if (point.Room is not { } room)
        {
            yield break;
        }

        if (point is Hole hole && HoleBeyond.Of(context.Plan, hole) is var far and > Touch.ToleranceMm)
        {
            string through = hole.Wall is { } wall ? $"the {wall.Word()} wall" : $"the {hole.Terms.FirstOrDefault() ?? "floor"}";
            yield return Found(
                [hole.Id], far, $"hole {hole.Id} in {Named.Of(room)} reaches {context.Text(far)} beyond {through} of the shell",
                "check its size, or move it in", point.Span, point.At.Coordinate);
            yield break;
        }

        double by = context.Plan.Shell.Finished.Distance(Shape.Factory.CreatePoint(point.At.Coordinate));
        if (by > Touch.ToleranceMm)
        {
            yield return Found(
                [point.Id], by, $"{point.Id} in {Named.Of(room)} lies {context.Text(by)} beyond the finished face of the shell",
                $"move it in by {context.Text(by)}", point.Span, point.At.Coordinate);
        }

        if (point.Height is { } height && (height - room.CeilingHeight).Millimetres is var over && over > Touch.ToleranceMm)
        {
            yield return Found(
                [point.Id, room.Id], over, $"{point.Id} is {context.Text(over)} above the finished ceiling of {Named.Of(room)}",
                $"lower it by {context.Text(over)}", point.Span, point.At.Coordinate);
        }
    }

    private Finding Found(IReadOnlyList<string> things, double by, string message, string mend, SourceSpan span, Coordinate at)
        => CheckContext.Find(this, Severity.Error, things, message, mend, span, at) with { Measured = by };

    private static double HowFar(Geometry beyond, Geometry shell)
        => beyond.Coordinates.Max(c => DistanceTo(shell, c));

    private static double DistanceTo(Geometry shape, Coordinate point)
    {
        var distance = new PointPairDistance();
        DistanceToPoint.ComputeDistance(((Polygon)shape).ExteriorRing, point, distance);
        return distance.Distance;
    }
}
