using Floorplan.Model;
using Floorplan.Model.Space;
using Floorplan.Model.Stations;
using NetTopologySuite.Algorithm.Locate;
using NetTopologySuite.Geometries;

namespace Floorplan.Sizing.CarryingIn;

/// <summary>
/// The plan in square cells: open air, floor and door holes, and wall. Says how far each cell is from walls and from things, and how broad
/// a disc can go from it to the open air.
/// </summary>
internal sealed class CarryGrid
{
    private const double Fine = 50;

    /// <summary>Cells of a large plan are coarser, so that a hall of any size takes no more of them; own bound.</summary>
    private const double MostCells = 250_000;

    /// <summary>In whole mm; broader discs are not told apart while cells wait their turn.</summary>
    private const int Radii = 4096;

    /// <summary>What a cell costs in one round, counted as <see cref="Steps"/>. Measured.</summary>
    private const int CellSteps = 6;

    private static readonly (int X, int Y)[] Neighbours = [(1, 0), (-1, 0), (0, 1), (0, -1)];

    private readonly Coordinate corner;
    private readonly bool[] isWall;
    private readonly bool[] isOpen;
    private readonly double[] fromWalls;

    public CarryGrid(Plan plan)
    {
        var box = plan.Shell.Outside.EnvelopeInternal;
        Cell = CellOf(plan);
        corner = new Coordinate(box.MinX - (2 * Cell), box.MinY - (2 * Cell));
        Wide = (int)Math.Ceiling(box.Width / Cell) + 4;
        Deep = (int)Math.Ceiling(box.Height / Cell) + 4;
        isWall = new bool[Wide * Deep];
        isOpen = Enumerable.Repeat(true, Wide * Deep).ToArray();
        Fill(plan.Shell.Outside, at => (isWall[at], isOpen[at]) = (true, false));
        foreach (var floor in plan.Rooms.Select(r => (Geometry)r.Floor))
        {
            Fill(floor, at => isWall[at] = false);
        }

        foreach (var opening in plan.Openings.Where(o => o.IsPassage))
        {
            Fill(opening.Reveal, at => isWall[at] = false);
        }

        fromWalls = DistanceField.Of(isWall, Wide, Deep, Cell);
    }

    public double Cell { get; }

    /// <summary>The side of a cell in mm.</summary>
    public static double CellOf(Plan plan)
        => Math.Max(Fine, Math.Ceiling(Math.Sqrt(plan.Shell.Outside.EnvelopeInternal.Area / MostCells)));

    public int Wide { get; }

    public int Deep { get; }

    /// <summary>From the middle of a cell to the nearest wall, in mm.</summary>
    public double FromWalls(int cell) => isOpen[cell] ? double.MaxValue : fromWalls[cell];

    public int At(Coordinate place) => At(place.X, place.Y);

    public int At(double x, double y)
        => (Math.Clamp((int)((y - corner.Y) / Cell), 0, Deep - 1) * Wide) + Math.Clamp((int)((x - corner.X) / Cell), 0, Wide - 1);

    public Coordinate Middle(int cell) => new(corner.X + (((cell % Wide) + 0.5) * Cell), corner.Y + (((cell / Wide) + 0.5) * Cell));

    public IEnumerable<int> Beside(int cell)
    {
        foreach (var (x, y) in Neighbours)
        {
            int column = (cell % Wide) + x;
            int row = (cell / Wide) + y;
            if (column >= 0 && column < Wide && row >= 0 && row < Deep)
            {
                yield return (row * Wide) + column;
            }
        }
    }

    /// <summary>
    /// For each cell the largest radius of a disc that can go from it to the open air past these things, and how long its way is.
    /// </summary>
    public OutField WidestOut(IEnumerable<Station> things)
    {
        Steps.Take((long)CellSteps * Wide * Deep);
        var taken = new bool[Wide * Deep];
        foreach (var thing in things)
        {
            Fill(thing.Footprint, at => taken[at] = true);
        }

        double[] fromThings = DistanceField.Of(taken, Wide, Deep, Cell);
        double[] widest = new double[Wide * Deep];
        double[] away = new double[Wide * Deep];
        Array.Fill(away, OutField.Nowhere);
        double[] wentOn = new double[Wide * Deep];

        // Widest first, to the millimetre, and in the order of coming within one: lists are filled and read faster than a heap.
        var waiting = new List<int>?[Radii];
        Reach(0, double.MaxValue, 0);
        for (int radius = Radii - 1; radius >= 0; radius--)
        {
            for (int i = 0; i < waiting[radius]?.Count; i++)
            {
                int cell = waiting[radius]![i];
                if (wentOn[cell] < widest[cell])
                {
                    wentOn[cell] = widest[cell];
                    GoOn(cell);
                }
            }
        }

        return new OutField(widest, away);

        // As Beside, written out: each cell of the plan comes here, once for every round of things.
        void GoOn(int cell)
        {
            int column = cell % Wide;
            if (column + 1 < Wide)
            {
                Step(cell, cell + 1);
            }

            if (column > 0)
            {
                Step(cell, cell - 1);
            }

            if (cell + Wide < widest.Length)
            {
                Step(cell, cell + Wide);
            }

            if (cell >= Wide)
            {
                Step(cell, cell - Wide);
            }
        }

        void Step(int from, int to)
        {
            if (isOpen[to])
            {
                Reach(to, widest[from], 0);
            }
            else
            {
                Reach(to, Math.Min(widest[from], Math.Min(fromWalls[to], fromThings[to])), away[from] + Cell);
            }
        }

        void Reach(int cell, double radius, double mm)
        {
            if (radius > widest[cell])
            {
                (widest[cell], away[cell]) = (radius, mm);
                (waiting[(int)Math.Min(radius, Radii - 1)] ??= []).Add(cell);
            }
        }
    }

    /// <summary>Every cell whose middle lies in a shape.</summary>
    private void Fill(Geometry shape, Action<int> mark)
    {
        var box = shape.EnvelopeInternal;
        var locator = shape.IsRectangle ? null : new IndexedPointInAreaLocator(shape);
        int low = At(new Coordinate(box.MinX, box.MinY));
        int high = At(new Coordinate(box.MaxX, box.MaxY));
        for (int row = low / Wide; row <= high / Wide; row++)
        {
            for (int column = low % Wide; column <= high % Wide; column++)
            {
                int cell = (row * Wide) + column;
                var middle = Middle(cell);
                if (box.Contains(middle) && (locator is null || locator.Locate(middle) != Location.Exterior))
                {
                    mark(cell);
                }
            }
        }
    }
}

/// <summary>What each cell of a grid has to the open air.</summary>
/// <param name="Widest">Largest radius of a disc that can go there, in mm.</param>
/// <param name="Away">Length of the way that the widest disc goes, in mm; 0 in the open.</param>
internal sealed record OutField(double[] Widest, double[] Away)
{
    /// <summary>Farther than any way.</summary>
    public const double Nowhere = 1e9;
}
