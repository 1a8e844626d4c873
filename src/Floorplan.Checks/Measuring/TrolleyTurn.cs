using Floorplan.Model;
using Floorplan.Model.Space;
using Floorplan.Model.Space.Turning;
using NetTopologySuite.Geometries;

namespace Floorplan.Checks.Measuring;

/// <summary>Trolleys at the bends of their ways, over all the floor that lies there.</summary>
internal sealed class TrolleyTurn(Plan plan)
{
    /// <summary>A way that bends less is steered through, in degrees; own assumption.</summary>
    private const double LeastBend = 30;

    /// <summary>Step at which the search ends, in mm; own assumption.</summary>
    private const double Finest = 10;

    /// <summary>Edges looked at for all trolleys of a plan; some tenths of a second. What is over is taken as passing.</summary>
    private const long MostEffort = 8_000_000;

    /// <summary>The longest trolley that goes round is found to this, in mm.</summary>
    private const double Exact = 10;

    private readonly Effort effort = new(MostEffort);
    private readonly Dictionary<double, SolidEdges> edges = [];
    private readonly Dictionary<(LongBox, Coordinate, Coordinate), (Coordinate At, double Passes)?> known = [];

    /// <summary>
    /// The first bend of a way that lets only a shorter trolley pass, and how long that may be; null when it turns everywhere.
    /// </summary>
    public (Coordinate At, double Passes)? Tightest(Route route, LongBox box)
    {
        foreach (var stretch in new WayBends(route.Path).Stretches(box.Width, LeastBend, (box.Length / 2) + Near(box)))
        {
            var key = (box, stretch.From, stretch.To);
            if (!known.TryGetValue(key, out var tight))
            {
                known[key] = tight = Passes(stretch, box);
            }

            if (tight is not null)
            {
                return tight;
            }
        }

        return null;
    }

    /// <summary>How near to its way the middle of a trolley begins and ends, so that no pose on the far side of a wall counts.</summary>
    private static double Near(LongBox box) => Math.Min(box.Length / 2, box.Width);

    private (Coordinate At, double Passes)? Passes(BentStretch stretch, LongBox box)
    {
        double near = Math.Min(Near(box), stretch.From.Distance(stretch.To) / 3);
        var frame = stretch.Box.Copy();
        frame.ExpandBy(box.Length + box.Width);

        // Out of doors it goes no farther than to be half through a door: all round is free, and looking there takes long.
        var building = plan.Shell.Outside.EnvelopeInternal.Copy();
        building.ExpandBy(box.Length / 2);
        building.ExpandToInclude(stretch.Box);
        frame = frame.Intersection(building);
        var around = frame.Copy();
        around.ExpandBy(box.Diagonal);
        var moving = new Moving(Edges(box.Width).Within(around), Finest, effort);
        var moved = Go(box);
        if (moved.Goes || moved.Nearest is not { } stuck)
        {
            return null;
        }

        // What the search gives up on is not said to go round.
        double passes = 0;
        for (double not = box.Length; not - passes > Exact;)
        {
            double middle = (passes + not) / 2;
            (passes, not) = Go(new LongBox(middle, box.Width)) is { Goes: true, IsSure: true } ? (middle, not) : (passes, middle);
        }

        var at = new Coordinate(stuck.X, stuck.Y);
        return (stretch.Bends.MinBy(b => b.Distance(at))!, passes);

        Moved Go(LongBox trolley)
            => moving.Go(new Move(trolley, frame, [new Spot(stretch.From, near)], [new Spot(stretch.To, near)], stretch.Angle));
    }

    /// <summary>Walls with all doors open that it fits through, and whatever stands or hangs below its height.</summary>
    private SolidEdges Edges(double width)
    {
        if (!edges.TryGetValue(width, out var all))
        {
            edges[width] = all = new SolidEdges(
                SolidEdges.OfWalls(plan, o => o.IsWalkable && o.Width.Millimetres >= width)
                    .Concat(SolidEdges.OfThings(plan.Stations.Where(s => s.Bottom.Millimetres < Mover.Trolley(width).HeightMm))));
        }

        return all;
    }
}
