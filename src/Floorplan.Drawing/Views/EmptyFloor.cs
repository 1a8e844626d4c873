using Floorplan.Drawing.Scene;
using NetTopologySuite.Algorithm.Locate;
using NetTopologySuite.Geometries;

namespace Floorplan.Drawing.Views;

/// <summary>
/// Finds a piece of a room on which nothing is drawn yet. The room is a grid of cells on paper; what is drawn takes cells, and
/// a table of sums answers at once whether a rectangle is empty.
/// </summary>
internal sealed class EmptyFloor
{
    private const int MostCells = 80;
    private const double SmallestCell = 1;

    private readonly PaperBox bounds;
    private readonly double cell;
    private readonly int columns;
    private readonly int rows;
    private readonly bool[,] taken;

    public EmptyFloor(Polygon room, PlanTransform transform, IEnumerable<SceneItem> drawn)
    {
        bounds = transform.ToPaper(room.EnvelopeInternal);
        cell = Math.Max(SmallestCell, Math.Max(bounds.Width, bounds.Height) / MostCells);
        columns = Math.Max(1, (int)(bounds.Width / cell));
        rows = Math.Max(1, (int)(bounds.Height / cell));
        taken = new bool[columns, rows];
        TakeOutside(room, transform);
        foreach (var item in drawn)
        {
            Take(item);
        }
    }

    private EmptyFloor(EmptyFloor other)
    {
        (bounds, cell, columns, rows) = (other.bounds, other.cell, other.columns, other.rows);
        taken = (bool[,])other.taken.Clone();
    }

    /// <summary>The same without what this box takes.</summary>
    public EmptyFloor Less(PaperBox box)
    {
        var less = new EmptyFloor(this);
        less.Take(box);
        return less;
    }

    /// <summary>An empty rectangle of this size nearest to a place, or null.</summary>
    public PaperBox? Find(double width, double height, PaperPoint near)
    {
        int across = (int)Math.Ceiling(width / cell);
        int down = (int)Math.Ceiling(height / cell);
        int[,] sums = Sums();
        PaperBox? best = null;
        double bestDistance = double.PositiveInfinity;
        for (int x = 0; x + across <= columns; x++)
        {
            for (int y = 0; y + down <= rows; y++)
            {
                if (sums[x + across, y + down] - sums[x, y + down] - sums[x + across, y] + sums[x, y] > 0)
                {
                    continue;
                }

                var box = PaperBox.At(new(bounds.Left + (x * cell), bounds.Top + (y * cell)), across * cell, down * cell);
                double distance = Math.Abs(box.Centre.X - near.X) + Math.Abs(box.Centre.Y - near.Y);
                if (distance < bestDistance - 1e-9)
                {
                    (best, bestDistance) = (box, distance);
                }
            }
        }

        return best;
    }

    public void Take(PaperBox box)
    {
        if (!box.Overlaps(bounds))
        {
            return;
        }

        for (int x = Column(box.Left); x <= Column(box.Right); x++)
        {
            for (int y = Row(box.Top); y <= Row(box.Bottom); y++)
            {
                taken[x, y] = true;
            }
        }
    }

    private void Take(AreaItem area)
    {
        var around = PaperBox.Of(area.Rings);
        if (!around.Overlaps(bounds))
        {
            return;
        }

        for (int y = Row(around.Top); y <= Row(around.Bottom); y++)
        {
            var edges = Crossed(area, bounds.Top + ((y + 0.5) * cell));
            int passed = 0;
            for (int x = Column(around.Left); x <= Column(around.Right); x++)
            {
                double at = bounds.Left + ((x + 0.5) * cell);
                while (passed < edges.Count && edges[passed] <= at)
                {
                    passed++;
                }

                taken[x, y] |= (edges.Count - passed) % 2 == 1;
            }
        }

        foreach (var ring in area.Rings)
        {
            for (int i = 0; i < ring.Count; i++)
            {
                Take(ring[i], ring[(i + 1) % ring.Count]);
            }
        }
    }

    /// <summary>Where a row meets the outline, from left to right. A place is covered when an odd number lies right of it.</summary>
    private static List<double> Crossed(AreaItem area, double y)
    {
        var edges = new List<double>();
        foreach (var ring in area.Rings)
        {
            for (int i = 0; i < ring.Count; i++)
            {
                var a = ring[i];
                var b = ring[(i + 1) % ring.Count];
                if ((a.Y > y) != (b.Y > y))
                {
                    edges.Add(a.X + ((y - a.Y) / (b.Y - a.Y) * (b.X - a.X)));
                }
            }
        }

        edges.Sort();
        return edges;
    }

    private void Take(SceneItem item)
    {
        switch (item)
        {
            case LineItem line:
                Take(line.From, line.To);
                break;
            case PolylineItem line:
                for (int i = 1; i < line.Points.Count; i++)
                {
                    Take(line.Points[i - 1], line.Points[i]);
                }

                if (line.Closed)
                {
                    Take(line.Points[^1], line.Points[0]);
                }

                break;
            case ArcItem arc:
                Take(new PaperBox(arc.Centre.X - arc.Radius, arc.Centre.Y - arc.Radius, arc.Centre.X + arc.Radius, arc.Centre.Y
                    + arc.Radius), arc);
                break;
            case AreaItem area:
                Take(area);
                break;
            case TextItem text:
                Take(Lettering.TextMeasure.Box(text));
                break;
        }
    }

    private void Take(PaperBox around, ArcItem arc)
    {
        if (!around.Overlaps(bounds))
        {
            return;
        }

        int steps = Math.Max(4, (int)(arc.Radius * Math.Abs(arc.EndDegrees - arc.StartDegrees) / 60 / cell));
        var last = At(arc, 0);
        for (int i = 1; i <= steps; i++)
        {
            var next = At(arc, i / (double)steps);
            Take(last, next);
            last = next;
        }
    }

    private static PaperPoint At(ArcItem arc, double share) =>
        arc.Centre
            + Symbols.PaperShapes.Times(
                Symbols.PaperShapes.Direction(arc.StartDegrees + ((arc.EndDegrees - arc.StartDegrees) * share)), arc.Radius);

    private void Take(PaperPoint from, PaperPoint to)
    {
        if (!PaperBox.Of(from, to).Grown(1e-6).Overlaps(bounds))
        {
            return;
        }

        int steps = Math.Min(4 * MostCells, Math.Max(1, (int)(2 * Symbols.PaperShapes.Length(to - from) / cell)));
        for (int i = 0; i <= steps; i++)
        {
            var at = Symbols.PaperShapes.Between(from, to, i / (double)steps);
            if (bounds.Holds(at))
            {
                taken[Column(at.X), Row(at.Y)] = true;
            }
        }
    }

    private int Column(double x) => Math.Clamp((int)((x - bounds.Left) / cell), 0, columns - 1);

    private int Row(double y) => Math.Clamp((int)((y - bounds.Top) / cell), 0, rows - 1);

    private void TakeOutside(Polygon room, PlanTransform transform)
    {
        if (room.IsRectangle)
        {
            return;
        }

        var locator = new IndexedPointInAreaLocator(room);
        for (int x = 0; x < columns; x++)
        {
            for (int y = 0; y < rows; y++)
            {
                double atX = (bounds.Left + ((x + 0.5) * cell) - transform.Origin.X) * transform.Denominator;
                double atY = (transform.Origin.Y - bounds.Top - ((y + 0.5) * cell)) * transform.Denominator;
                taken[x, y] = locator.Locate(new Coordinate(atX, atY)) == Location.Exterior;
            }
        }
    }

    private int[,] Sums()
    {
        int[,] sums = new int[columns + 1, rows + 1];
        for (int x = 0; x < columns; x++)
        {
            for (int y = 0; y < rows; y++)
            {
                sums[x + 1, y + 1] = sums[x, y + 1] + sums[x + 1, y] - sums[x, y] + (taken[x, y] ? 1 : 0);
            }
        }

        return sums;
    }
}
