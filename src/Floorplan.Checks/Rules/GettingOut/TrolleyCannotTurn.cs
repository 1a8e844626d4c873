using Floorplan.Checks.Framework;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Flows;
using Floorplan.Model.Shapes;
using Floorplan.Model.Space;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;
using NetTopologySuite.Operation.OverlayNG;

namespace Floorplan.Checks.Rules.GettingOut;

/// <summary>Trolleys on their real way, at every bend of it: room to spin, or a corner that their length goes round.</summary>
internal sealed class TrolleyCannotTurn : Rule
{
    /// <summary>A platform trolley of 600 x 900 mm; common practice, no source.</summary>
    private const double UsualLength = 900;

    private const double UsualWidth = 600;

    /// <summary>A gentler bend is steered through.</summary>
    private const double LeastBend = 60;

    /// <summary>The trolley keeps this far off walls on both sides together, mm; own assumption.</summary>
    private const double Clearance = 20;

    /// <summary>Wider passages than this are as good as open floor, mm.</summary>
    private const double Wide = 6000;

    /// <summary>Degrees by which a way may lead aslant through a passage.</summary>
    private const int MostSlant = 20;

    private static readonly Mover Probe = new("a probe", 1, 1900);

    public override string Name => "trolley-cannot-turn";

    public override RuleGroup Group => RuleGroup.GettingOut;

    public override string Says => "On its way a trolley comes to a corner that is too tight for its length, and there is no room near it to spin. Passages are taken as meeting at a right angle.";

    public override string Why => "A loaded trolley that has to be lifted round a corner takes two people and a back.";

    public override string Mend => "Widen the passage before or behind the corner, take a shorter trolley, or move what stands in the corner.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("geometry: the longest rectangle round a right-angled corner, as the ladder problem of textbooks", Origin.CommonPractice),
        new("platform trolley 600 x 900 mm, common practice", Origin.CommonPractice),
        new("10 mm free on either side", Origin.OwnAssumption),
    ];

    public override IReadOnlyList<RuleLimit> Limits => [new("length of a trolley when the plan does not say it", UsualLength, LimitUnit.Millimetres, Sources[1], Severity.Warning)];

    public override string Bad => Unit(740);

    public override string Good => Unit(1200);

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        if (context.Limit(this) is not { } usual)
        {
            yield break;
        }

        foreach (var leg in context.Space.LegRoutes.Where(l => l is { Leg.Carriage.Kind: CarriageKind.Trolley, Route: not null }))
        {
            double width = (leg.Leg.Carriage.Width?.Millimetres ?? UsualWidth) + Clearance;
            double length = leg.Leg.Carriage.Length?.Millimetres ?? usual.Value;
            if (Tightest(context.Space, leg.Route!, width, length) is { } tight)
            {
                var stops = new[] { leg.Leg.From, leg.Leg.To }.Where(s => s is not OutsideStop).Select(s => s.Name);
                var finding = CheckContext.Find(
                    this, usual, tight.Passes, [.. stops.Distinct()],
                    $"a trolley {context.Text(width - Clearance)} wide and {context.Text(length)} long from {Named.Of(leg.Leg.From)} to {Named.Of(leg.Leg.To)} cannot turn at the corner "
                        + $"{Say.Place(tight.At, context.Plan.Units)}: {context.Text(Math.Floor(tight.Passes))} goes round",
                    "widen the passage there, take a shorter trolley, or write its length behind its width: by trolley 600 wide 800 long", leg.Leg.Span, tight.At);
                yield return leg.Leg.Carriage.Length is null ? finding : finding with { Limit = "the length of the trolley in this plan", LimitValue = length };
            }
        }
    }

    /// <summary>The corner that lets the shortest trolley pass, when that is shorter than this one; null when it turns everywhere.</summary>
    private static (Coordinate At, double Passes)? Tightest(IFloorSpace space, Route route, double width, double length)
    {
        double diagonal = Math.Sqrt((width * width) + (length * length));
        Geometry? ground = null;
        Geometry? spin = null;
        (Coordinate At, double Passes)? tightest = null;
        foreach (var bend in CornerTurn.Bends(route.Path, width, LeastBend))
        {
            ground ??= Ground(space, route);
            double a = Across(ground, bend.Before, length / 2);
            double b = Across(ground, bend.After, length / 2);
            double passes = CornerTurn.Longest(a, b, width);
            if (passes >= length - Tiers.Tolerance || Math.Max(a, b) >= diagonal || tightest is { } known && known.Passes <= passes)
            {
                continue;
            }

            spin ??= ground.Buffer(-diagonal / 2, new BufferParameters(4));
            if (spin.IsEmpty || spin.Distance(Shape.Factory.CreatePoint(bend.At)) > length)
            {
                tightest = (bend.At, passes);
            }
        }

        return tightest;
    }

    /// <summary>All floor that the way leads over, doorways included.</summary>
    private static Geometry Ground(IFloorSpace space, Route route)
    {
        var rooms = route.Rooms.Where(r => r is not null).DistinctBy(r => r!.Id).Select(r => space.FreeFloor(r!, Probe));
        var doors = route.Openings.Select(o => (Geometry)o.Reveal);

        // The probe stays half a millimetre off the walls, so that floors and doorways would not quite meet.
        var parts = rooms.Concat(doors).Select(g => g.Buffer(1, new BufferParameters(1, EndCapStyle.Square, JoinStyle.Mitre, 2))).ToArray();
        return OverlayNGRobust.Union(Shape.Factory.BuildGeometry(parts));
    }

    /// <summary>Width of the passage a little before or behind the bend: the way may lead through it at a slant, so that the shortest line across is taken.</summary>
    private static double Across(Geometry ground, Direction way, double off)
    {
        var at = new Coordinate(way.From.X + (way.X * off), way.From.Y + (way.Y * off));
        double square = Math.Atan2(way.Y, way.X) + (Math.PI / 2);
        double width = Wide;
        for (int degrees = -MostSlant; degrees <= MostSlant; degrees += 2)
        {
            width = Math.Min(width, Chord(ground, at, square + (degrees * Math.PI / 180)));
        }

        return width;
    }

    /// <summary>Where the way ends sooner than that, or leaves the building, there is no passage to be tight.</summary>
    private static double Chord(Geometry ground, Coordinate at, double angle)
    {
        double x = Math.Cos(angle) * Wide / 2;
        double y = Math.Sin(angle) * Wide / 2;
        var met = Shape.Factory.CreateLineString([new(at.X - x, at.Y - y), new(at.X + x, at.Y + y)]).Intersection(ground);
        var here = Shape.Factory.CreatePoint(at);
        double width = 0;
        for (int i = 0; i < met.NumGeometries; i++)
        {
            width = Math.Max(width, met.GetGeometryN(i).Distance(here) <= 1 ? met.GetGeometryN(i).Length : 0);
        }

        return width == 0 ? Wide : width;
    }

    private static string Unit(int passage) => FormattableString.Invariant($"""
        plan "Round the corner"
          units metric
        shell shed 8000 x 4000 x 2600
        room pack "Packing" dry from west to east
        door d1 pack to outside, west wall, {(passage / 2) - 320} from south, 640 x 2100, swings out
        door d2 pack to outside, north wall, {(passage / 2) - 320} from east, 640 x 2100, swings out
        station block "Freezer block" in pack
          size {7800 - passage} x {3800 - passage} x 2000
          place against west wall, against north wall
        flow product
          outside -> d1 -> d2 -> outside   by trolley 600 wide
        """);
}
