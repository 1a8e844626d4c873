using Floorplan.Model;
using Floorplan.Model.Space.Turning;
using Floorplan.Model.Stations;

namespace Floorplan.Sizing.CarryingIn;

/// <summary>
/// Things carried between their place and the open air as rigid rectangles, slid and turned round corners. The way in is the way out gone
/// backwards. What is over the effort is taken as passing.
/// </summary>
internal sealed class CarryTurn(Plan plan, Effort effort)
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

    /// <summary>Lines along the shell are fewest.</summary>
    private double Along => plan.Shell.Outside.EnvelopeInternal is { } box && box.Width >= box.Height ? 0 : Math.PI / 2;

    public CarryGrid Grid { get; } = new(plan);

    /// <summary>For all questions about one plan.</summary>
    public static Effort NewEffort() => new(MostEffort);

    /// <summary>
    /// Whether a thing gets out past edges: upright it starts as it stands, and on its side anyhow over its place, on this side of all
    /// walls.
    /// </summary>
    /// <param name="finest"><see cref="Alone"/> or <see cref="PastOthers"/>.</param>
    public Moved Out(SolidEdges edges, OutField field, Station thing, Solid solid, double finest)
    {
        var box = new LongBox(solid.Long, solid.Broad);
        var at = thing.Bounds.Centre.Coordinate;
        bool alongX = thing.Bounds.Width >= thing.Bounds.Depth;
        var upright = Solid.Of(thing);
        var start = solid == upright ? new Spot(at, 0, alongX ? 0 : Math.PI / 2) : new Spot(at, upright.Broad / 2);
        var frame = plan.Shell.Outside.EnvelopeInternal.Copy();
        frame.ExpandBy(box.Length);
        return new Moving(edges, finest, effort).Go(new Move(box, frame, [start], [], Along)
        {
            Itself = thing,
            Away = (x, y) => field.Away[Grid.At(x, y)],
        });
    }
}
