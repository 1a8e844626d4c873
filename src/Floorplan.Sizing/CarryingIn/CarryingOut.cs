using Floorplan.Model;
using Floorplan.Model.Shapes;
using Floorplan.Model.Space;
using Floorplan.Model.Space.Turning;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;
using NetTopologySuite.Index.Strtree;

namespace Floorplan.Sizing.CarryingIn;

/// <summary>Carries things out of a finished unit, one after another.</summary>
internal sealed class CarryingOut
{
    /// <summary>What a cell costs in the search for a way of a disc, counted as <see cref="Steps"/>. Own estimate.</summary>
    private const int CellSteps = 20;

    private readonly WayIn way;
    private readonly IReadOnlyList<SolidEdge> walls;
    private readonly STRtree<Station> standing = new();
    private readonly HashSet<Station> inside;

    /// <summary>Of the round; null until something is not out by a quick look.</summary>
    private OutField? field;

    public CarryingOut(Plan plan, WayIn way, IReadOnlyList<Station> things)
    {
        this.way = way;
        walls = [.. SolidEdges.OfWalls(plan, o => o.IsPassage)];
        inside = new HashSet<Station>(things, ReferenceEqualityComparer.Instance);
        foreach (var thing in things)
        {
            standing.Insert(thing.Footprint.EnvelopeInternal, thing);
        }
    }

    private CarryGrid Grid => way.Turn.Grid;

    /// <summary>Half the smallest side of a thing, tipped if it must be, in mm.</summary>
    public static double Radius(Station station)
    {
        var solid = Solid.Of(station);
        return Math.Min(solid.Broad, solid.High) / 2;
    }

    /// <summary>Takes out round by round; what is left in <paramref name="left"/> is stuck.</summary>
    /// <remarks>A thing that passes the doors on no side never comes out: it is not tried, and stands in the way of the others.</remarks>
    public void TakeOut(List<Station> left, List<List<BroughtIn>> rounds)
    {
        var hopeless = left.Where(t => !Solid.SidesOf(t).Any(s => way.PassesDoors(t, s)))
            .ToHashSet<Station>(ReferenceEqualityComparer.Instance);
        var denied = new Dictionary<Station, HashSet<Station>>(ReferenceEqualityComparer.Instance);
        List<BroughtIn> before = [];
        while (left.Count > hopeless.Count)
        {
            field = null;
            var edges = new SolidEdges(walls.Concat(SolidEdges.OfThings(left)));
            var round = new List<BroughtIn>();
            foreach (var thing in left.Where(t => !hopeless.Contains(t)))
            {
                var blockers = new HashSet<Station>(ReferenceEqualityComparer.Instance);
                if (GoesSquare(thing, edges)
                    || (DiscGetsOut(thing, Field(left).Widest, blockers) && Turns(thing, Field(left), edges, blockers)))
                {
                    var ahead = denied.GetValueOrDefault(thing);
                    round.Add(
                        new BroughtIn(
                            thing, [.. before.Select(b => b.Station).Where(s => ahead?.Contains(s) == true).OrderBy(s => s.Item)], null));
                }

                denied[thing] = blockers;
            }

            if (round.Count == 0)
            {
                return;
            }

            foreach (var gone in round)
            {
                inside.Remove(gone.Station);
            }

            left.RemoveAll(s => !inside.Contains(s));
            rounds.Add(round);
            before = round;
        }
    }

    /// <summary>What goes out square to the plan with room to spare needs no search, of a disc or of the rectangle.</summary>
    private bool GoesSquare(Station thing, SolidEdges edges)
    {
        var upright = Solid.Of(thing);
        if (!way.PassesDoors(thing, upright) || !way.Turn.OutSquare(edges, thing, CarryTurn.PastOthers))
        {
            return false;
        }

        if (thing.Diameter is null)
        {
            way.NoteTurned(thing, upright);
        }

        return true;
    }

    private OutField Field(List<Station> left) => field ??= Grid.WidestOut(left);

    /// <summary>Searches only round the thing itself: once it is where any thing of its breadth can go on, it is out.</summary>
    private bool DiscGetsOut(Station thing, double[] widest, HashSet<Station> blockers)
    {
        double radius = Radius(thing) - Grid.Cell;
        int start = Grid.At(thing.Bounds.Centre.Coordinate);
        var own = thing.Footprint.EnvelopeInternal;
        var seen = new HashSet<int> { start };
        var queue = new Queue<int>([start]);
        while (queue.TryDequeue(out int cell))
        {
            if (widest[cell] >= radius)
            {
                return true;
            }

            Steps.Take(CellSteps);
            foreach (int next in Grid.Beside(cell))
            {
                if (seen.Contains(next) || (Grid.FromWalls(next) < radius && !own.Contains(Grid.Middle(next))))
                {
                    continue;
                }

                seen.Add(next);
                if (IsFree(thing, Grid.Middle(next), own, radius, blockers))
                {
                    queue.Enqueue(next);
                }
            }
        }

        return false;
    }

    /// <summary>Long as it is: upright, or else on a side on which it passes all doors.</summary>
    private bool Turns(Station thing, OutField field, SolidEdges edges, HashSet<Station> blockers)
    {
        var upright = Solid.Of(thing);
        if (thing.Diameter is not null)
        {
            return true;
        }

        // Nothing to start from upright is a thing placed into another, which is another mistake; on its side it may have no room just
        // there.
        bool goesUpright = way.PassesDoors(thing, upright);
        foreach (var solid in Solid.SidesOf(thing).Distinct().Where(s => way.PassesDoors(thing, s)))
        {
            var moved = way.Turn.Out(edges, field, thing, solid, CarryTurn.PastOthers);
            if (moved.Goes || (moved.Nearest is null && (solid == upright || !goesUpright)))
            {
                if (moved.HasRoom)
                {
                    way.NoteTurned(thing, solid);
                }

                return true;
            }

            blockers.UnionWith(moved.Touched);
        }

        return false;
    }

    /// <summary>They stand already, because they came before a wall.</summary>
    public void LeaveOut(IEnumerable<Station> things) => inside.ExceptWith(things);

    private bool IsFree(Station thing, Coordinate middle, Envelope own, double radius, HashSet<Station> blockers)
    {
        if (own.Contains(middle))
        {
            return true;
        }

        var point = Shape.Factory.CreatePoint(middle);
        var near = new Envelope(middle);
        near.ExpandBy(Math.Max(0, radius));
        bool free = true;
        foreach (var other in standing.Query(near))
        {
            if (!ReferenceEquals(other, thing) && inside.Contains(other) && other.Footprint.Distance(point) < radius)
            {
                blockers.Add(other);
                free = false;
            }
        }

        return free;
    }
}
