using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Symbols;

namespace Floorplan.Drawing.Views;

/// <summary>
/// Moves routes that share floor sideways, so that each can be followed by eye. Every route takes the lane that runs least along
/// routes already laid; nearer the true way is better. Lanes are kept by place, so the work grows with the length laid.
/// </summary>
/// <param name="pitch">From one lane to the next on paper, mm.</param>
internal sealed class RouteLanes(double pitch)
{
    private const double SampleStep = 1;
    private const int MostLanes = 3;

    /// <summary>Two pieces run alongside when the sine of the angle between them is less.</summary>
    private const double NearlyParallel = 0.5;

    /// <summary>A lane further out must save this many mm of shared way.</summary>
    private const double LaneCost = 1.5;

    private readonly Dictionary<(int X, int Y), List<(PaperPoint At, PaperPoint Along)>> laid = [];

    public IReadOnlyList<PaperPoint> Lay(IReadOnlyList<PaperPoint> path)
    {
        IReadOnlyList<PaperPoint> best = path;
        double bestCost = double.PositiveInfinity;
        foreach (int lane in Enumerable.Range(0, (2 * MostLanes) + 1).Select(i => (i + 1) / 2 * (i % 2 == 0 ? -1 : 1)))
        {
            var moved = lane == 0 ? path : Moved(path, lane * pitch);
            double cost = Shared(moved) + (Math.Abs(lane) * LaneCost);
            if (cost < bestCost)
            {
                (best, bestCost) = (moved, cost);
            }
        }

        foreach (var (at, along) in Samples(best))
        {
            var key = Key(at);
            if (!laid.TryGetValue(key, out var cell))
            {
                laid[key] = cell = [];
            }

            cell.Add((at, along));
        }

        return best;
    }

    private double Shared(IReadOnlyList<PaperPoint> path) => Samples(path).Count(s => IsAlongside(s.At, s.Along)) * SampleStep;

    private bool IsAlongside(PaperPoint at, PaperPoint along)
    {
        var (x, y) = Key(at);
        for (int i = x - 1; i <= x + 1; i++)
        {
            for (int j = y - 1; j <= y + 1; j++)
            {
                if (laid.TryGetValue((i, j), out var cell)
                    && cell.Exists(o => PaperShapes.Length(o.At - at) < 0.8 * pitch && Math.Abs((o.Along.X * along.Y) - (o.Along.Y * along.X)) < NearlyParallel))
                {
                    return true;
                }
            }
        }

        return false;
    }

    private (int X, int Y) Key(PaperPoint at) => ((int)Math.Floor(at.X / pitch), (int)Math.Floor(at.Y / pitch));

    private static IEnumerable<(PaperPoint At, PaperPoint Along)> Samples(IReadOnlyList<PaperPoint> path)
    {
        for (int i = 0; i + 1 < path.Count; i++)
        {
            double length = PaperShapes.Length(path[i + 1] - path[i]);
            var along = PaperShapes.Towards(path[i], path[i + 1]);
            for (double at = SampleStep / 2; at < length; at += SampleStep)
            {
                yield return (path[i] + PaperShapes.Times(along, at), along);
            }
        }
    }

    /// <summary>The path moved to its left; corners are mitred, but no further out than twice the distance.</summary>
    private static List<PaperPoint> Moved(IReadOnlyList<PaperPoint> path, double by)
    {
        var points = path.Where((p, i) => i == 0 || PaperShapes.Length(p - path[i - 1]) > 1e-6).ToList();
        if (points.Count < 2)
        {
            return points;
        }

        var moved = new List<PaperPoint>(points.Count);
        for (int i = 0; i < points.Count; i++)
        {
            var before = PaperShapes.Left(PaperShapes.Towards(points[Math.Max(0, i - 1)], points[Math.Max(1, i)]));
            var after = PaperShapes.Left(PaperShapes.Towards(points[Math.Min(i, points.Count - 2)], points[Math.Min(i + 1, points.Count - 1)]));
            var normal = before + after;
            double square = (normal.X * normal.X) + (normal.Y * normal.Y);
            moved.Add(points[i] + PaperShapes.Times(normal, by * Math.Min(2 / Math.Max(square, 1e-9), 1)));
        }

        return moved;
    }
}
