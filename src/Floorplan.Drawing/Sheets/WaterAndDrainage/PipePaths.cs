using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Symbols;
using Floorplan.Drawing.Views;
using Floorplan.Model.Shapes;
using Floorplan.Model.Stations;

namespace Floorplan.Drawing.Sheets.WaterAndDrainage;

/// <summary>
/// The lines of one run on paper: one trunk through the point, along its wall (or along the sheet for points in mid floor), and a
/// square branch to every use.
/// </summary>
internal static class PipePaths
{
    /// <summary>Trunks of different kinds lie this far apart, from the wall inwards.</summary>
    private const double Lane = 1.7;

    /// <summary>A branch ends this far inside the outline of what it serves.</summary>
    private const double Inside = 1.2;

    /// <summary>A branch has the station that it runs to.</summary>
    public static IReadOnlyList<(PaperPoint From, PaperPoint To, bool Trunk, Station? Use)> Of(PipeRun run, PlanTransform transform)
    {
        var point = transform.ToPaper(run.Point.At);
        bool alongX = run.Point.Wall?.RunsEastWest() ?? true;
        int lane = run.Kind switch { NeedKind.ColdWater => 2, NeedKind.HotWater => 3, _ => 0 };
        var into = run.Point.Wall is { } wall ? wall.Opposite().Direction() : new PaperPoint(0, 0);
        var start = point + PaperShapes.Times(into, lane * Lane);
        var lines = new List<(PaperPoint, PaperPoint, bool, Station?)>();
        if (start != point)
        {
            lines.Add((point, start, false, null));
        }

        double low = alongX ? start.X : start.Y;
        double high = low;
        foreach (var use in run.Uses)
        {
            var box = transform.ToPaper(use.Bounds);

            // Side by side in the middle of the station, one place for each kind.
            double spread = (PipeLook.Piped.ToList().IndexOf(run.Kind) - 1) * Math.Min(Lane * 1.2, (alongX ? box.Width : box.Height) / 4);
            double at = (alongX ? box.Centre.X : box.Centre.Y) + spread;
            low = Math.Min(low, at);
            high = Math.Max(high, at);
            double trunk = alongX ? start.Y : start.X;
            var (near, far) = alongX ? (box.Top, box.Bottom) : (box.Left, box.Right);
            double end = trunk < near ? Math.Min(near + Inside, far) : trunk > far ? Math.Max(far - Inside, near) : trunk;
            if (end != trunk)
            {
                lines.Add(alongX ? (new(at, trunk), new(at, end), false, use) : (new(trunk, at), new(end, at), false, use));
            }
        }

        AddTrunk(lines, start, low, alongX);
        AddTrunk(lines, start, high, alongX);
        return lines;
    }

    private static void AddTrunk(List<(PaperPoint, PaperPoint, bool, Station?)> lines, PaperPoint start, double to, bool alongX)
    {
        var end = alongX ? new PaperPoint(to, start.Y) : new PaperPoint(start.X, to);
        if (end != start)
        {
            lines.Add((start, end, true, null));
        }
    }
}
