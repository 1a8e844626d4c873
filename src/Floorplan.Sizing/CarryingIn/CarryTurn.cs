using Floorplan.Model;
using Floorplan.Model.Space.Turning;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;

namespace Floorplan.Sizing.CarryingIn;

/// <summary>
/// Things carried between their place and the open air as rigid rectangles, slid and turned round corners. The way in is the way out gone
/// backwards. What is over the effort is taken as passing.
/// </summary>
internal sealed class CarryTurn(Plan plan, Effort effort, bool quickly)
{
    /// <summary>
    /// Step at which the search ends where only walls are in the way, in mm: what passes may be 20 mm too large on every side. Own
    /// assumption.
    /// </summary>
    public const double Alone = 12;

    /// <summary>The same past other things, which are more easily shifted than walls: 40 mm. Own assumption.</summary>
    public const double PastOthers = 25;

    /// <summary>Edges looked at for all things of a plan; about half a second. What is over is taken as passing.</summary>
    private const long MostEffort = 20_000_000;

    /// <summary>Edges looked at in quick looks, for all things of a plan. What is over is searched a way for.</summary>
    private const long MostQuick = 5_000_000;

    /// <summary>The same for one thing: more than most that go out need, and less than a search takes.</summary>
    private const long MostQuickOnce = 40_000;

    /// <summary>Where so many more quick looks found nothing than found a way, the plan is too tight for them.</summary>
    private const int MostLost = 3;

    private readonly Effort quick = new(MostQuick);
    private readonly Envelope shell = plan.Shell.Outside.EnvelopeInternal;

    private readonly List<Spot> doors =
        [.. plan.Openings.Where(o => o.IsPassage && o.InShell).Select(o => new Spot(o.Reveal.EnvelopeInternal.Centre, 0))];

    private CarryGrid? grid;
    private int lost;

    /// <summary>Lines along the shell are fewest.</summary>
    private double Along => shell.Width >= shell.Height ? 0 : Math.PI / 2;

    /// <summary>Made when first asked for: what goes out by a quick look needs none.</summary>
    public CarryGrid Grid => grid ??= new CarryGrid(plan);

    /// <summary>For all questions about one plan.</summary>
    public static Effort NewEffort() => new(MostEffort);

    /// <summary>
    /// A quick look at whether a thing gets out past edges as it stands, square to the plan; where this says so, <see cref="Out"/> does as
    /// well. False says nothing.
    /// </summary>
    /// <param name="finest"><see cref="Alone"/> or <see cref="PastOthers"/>.</param>
    public bool OutSquare(SolidEdges edges, Station thing, double finest)
    {
        if (!quickly || quick.IsSpent || lost >= MostLost)
        {
            return false;
        }

        var beyond = shell.Copy();
        beyond.ExpandBy(CarryGrid.CellOf(plan));
        bool leaves = new Moving(edges, finest, quick) { MostOnce = MostQuickOnce }
            .LeavesSquare(MoveOf(thing, Solid.Of(thing)) with { Goals = doors }, beyond);
        lost = leaves ? Math.Max(0, lost - 1) : lost + 1;
        return leaves;
    }

    /// <summary>
    /// Whether a thing gets out past edges: upright it starts as it stands, and on its side anyhow over its place, on this side of all
    /// walls.
    /// </summary>
    /// <param name="finest"><see cref="Alone"/> or <see cref="PastOthers"/>.</param>
    public Moved Out(SolidEdges edges, OutField field, Station thing, Solid solid, double finest)
        => new Moving(edges, finest, effort).Go(MoveOf(thing, solid) with { Away = (x, y) => field.Away[Grid.At(x, y)] });

    private Move MoveOf(Station thing, Solid solid)
    {
        var box = new LongBox(solid.Long, solid.Broad);
        var at = thing.Bounds.Centre.Coordinate;
        bool alongX = thing.Bounds.Width >= thing.Bounds.Depth;
        var upright = Solid.Of(thing);
        var start = solid == upright ? new Spot(at, 0, alongX ? 0 : Math.PI / 2) : new Spot(at, upright.Broad / 2);
        var frame = shell.Copy();
        frame.ExpandBy(box.Length);
        return new Move(box, frame, [start], [], Along) { Itself = thing };
    }
}
