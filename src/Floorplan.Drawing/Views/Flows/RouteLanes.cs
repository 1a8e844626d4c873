using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Symbols;

namespace Floorplan.Drawing.Views.Flows;

/// <summary>
/// Moves routes that share floor sideways, so that each can be followed by eye. Every route takes the lane that runs least along
/// routes already laid; nearer the true way is better. Lanes are kept by place, so the work grows with the length laid.
/// </summary>
/// <param name="pitch">From one lane to the next on paper, mm.</param>
internal sealed class RouteLanes(double pitch)
{
    private const double SampleStep = 1;
    private const int MostLanes = 3;

    /// <summary>A longer route, in samples, is looked at more coarsely: 5 m of paper is far beyond a plan that can be read.</summary>
    private const int MostSamples = 5000;

    /// <summary>Two pieces run alongside when the sine of the angle between them is less.</summary>
    private const double NearlyParallel = 0.5;

    /// <summary>A lane further out must save this many mm of shared way.</summary>
    private const double LaneCost = 1.5;

    /// <summary>Nearer together than this on one route is a bend, not the way back.</summary>
    private const int SamplesInBend = 6;

    private readonly Dictionary<(int X, int Y), List<Sample>> laid = [];

    /// <summary>Same number of points as the path, each moved.</summary>
    public IReadOnlyList<PaperPoint> Lay(IReadOnlyList<PaperPoint> path)
    {
        IReadOnlyList<PaperPoint> best = path;
        double bestCost = double.PositiveInfinity;
        foreach (int lane in Enumerable.Range(0, (2 * MostLanes) + 1).Select(i => (i + 1) / 2 * (i % 2 == 0 ? -1 : 1)))
        {
            var moved = lane == 0 ? path : Moved(path, lane * pitch);
            double cost = (Math.Abs(lane) * LaneCost) + Shared(moved, bestCost - (Math.Abs(lane) * LaneCost));
            if (cost < bestCost)
            {
                (best, bestCost) = (moved, cost);
            }

            if (bestCost <= Math.Abs(lane) * LaneCost)
            {
                break;
            }
        }

        Keep(laid, Samples(best));
        return best;
    }

    /// <summary>
    /// How far a path runs along routes already laid, or back along itself; counted no further than <paramref name="enough"/>.
    /// </summary>
    private double Shared(IReadOnlyList<PaperPoint> path, double enough)
    {
        var own = new Dictionary<(int X, int Y), List<Sample>>();
        double step = StepOf(path);
        int shared = 0;
        foreach (var sample in Samples(path))
        {
            bool alongside = Near(laid, sample).Any(o => IsAlongside(sample, o))
                || Near(own, sample).Any(o => sample.Number - o.Number > SamplesInBend && IsAlongside(sample, o));
            shared += alongside ? 1 : 0;
            if (shared * step >= enough)
            {
                break;
            }

            Keep(own, [sample]);
        }

        return shared * step;
    }

    private bool IsAlongside(Sample a, Sample b) =>
        PaperShapes.Length(a.At - b.At) < 0.8 * pitch && IsParallel(a, b);

    private static bool IsParallel(Sample a, Sample b) => Math.Abs((a.Along.X * b.Along.Y) - (a.Along.Y * b.Along.X)) < NearlyParallel;

    private IEnumerable<Sample> Near(Dictionary<(int X, int Y), List<Sample>> kept, Sample sample)
    {
        var (x, y) = Key(sample.At);
        for (int i = x - 1; i <= x + 1; i++)
        {
            for (int j = y - 1; j <= y + 1; j++)
            {
                foreach (var other in kept.GetValueOrDefault((i, j)) ?? [])
                {
                    yield return other;
                }
            }
        }
    }

    private void Keep(Dictionary<(int X, int Y), List<Sample>> kept, IEnumerable<Sample> samples)
    {
        foreach (var sample in samples)
        {
            var key = Key(sample.At);
            if (!kept.TryGetValue(key, out var cell))
            {
                kept[key] = cell = [];
            }

            // A route walked a thousand times is no fuller than one walked twice.
            if (!cell.Exists(o => PaperShapes.Length(sample.At - o.At) < SampleStep / 2 && IsParallel(sample, o)))
            {
                cell.Add(sample);
            }
        }
    }

    private (int X, int Y) Key(PaperPoint at) => ((int)Math.Floor(at.X / pitch), (int)Math.Floor(at.Y / pitch));

    private static IEnumerable<Sample> Samples(IReadOnlyList<PaperPoint> path)
    {
        double step = StepOf(path);
        int number = 0;
        for (int i = 0; i + 1 < path.Count; i++)
        {
            double length = PaperShapes.Length(path[i + 1] - path[i]);
            var along = PaperShapes.Towards(path[i], path[i + 1]);
            for (double at = step / 2; at < length; at += step)
            {
                yield return new Sample(path[i] + PaperShapes.Times(along, at), along, number++);
            }
        }
    }

    private static double StepOf(IReadOnlyList<PaperPoint> path)
    {
        double length = 0;
        for (int i = 0; i + 1 < path.Count; i++)
        {
            length += PaperShapes.Length(path[i + 1] - path[i]);
        }

        return Math.Max(SampleStep, length / MostSamples);
    }

    /// <summary>The path moved to its left; corners are mitred, but a sharp turn is not drawn out.</summary>
    private static List<PaperPoint> Moved(IReadOnlyList<PaperPoint> path, double by)
    {
        var before = Steps(path, forward: true);
        var after = Steps(path, forward: false);
        var moved = new List<PaperPoint>(path.Count);
        for (int i = 0; i < path.Count; i++)
        {
            var normal = PaperShapes.Left(before[i] ?? after[i] ?? new PaperPoint(1, 0))
                + PaperShapes.Left(after[i] ?? before[i] ?? new PaperPoint(1, 0));
            double square = (normal.X * normal.X) + (normal.Y * normal.Y);
            moved.Add(path[i] + PaperShapes.Times(normal, by * Math.Min(2 / Math.Max(square, 1e-9), 1)));
        }

        return moved;
    }

    /// <summary>For every point the direction of travel to it (or from it), over points that coincide with it; null at an end.</summary>
    private static PaperPoint?[] Steps(IReadOnlyList<PaperPoint> path, bool forward)
    {
        var steps = new PaperPoint?[path.Count];
        for (int n = 1; n < path.Count; n++)
        {
            int i = forward ? n : path.Count - 1 - n;
            int from = forward ? i - 1 : i + 1;
            bool coincide = PaperShapes.Length(path[i] - path[from]) <= 1e-6;
            steps[i] = coincide
                ? steps[from]
                : forward
                ? PaperShapes.Towards(path[from], path[i])
                : PaperShapes.Towards(path[i], path[from]);
        }

        return steps;
    }

    private readonly record struct Sample(PaperPoint At, PaperPoint Along, int Number);
}
