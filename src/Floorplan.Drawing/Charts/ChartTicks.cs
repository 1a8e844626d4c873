using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Drawing.Charts;

/// <summary>Places along an axis that numbers stand at.</summary>
internal static class ChartTicks
{
    private static readonly int[] Minutes = [1, 2, 5, 10, 15, 30, 60, 120, 240, 480];

    /// <summary>Whole numbers from 0 in steps of 1, 2 or 5 and tens of them; the last is at or over the highest value.</summary>
    /// <param name="most">No more steps than these.</param>
    public static IReadOnlyList<double> Numbers(double highest, int most)
    {
        double step = 1;
        while (Math.Ceiling(highest / step) > Math.Max(1, most))
        {
            double ten = Math.Pow(10, Math.Floor(Math.Log10(step) + 1e-9));
            step = (int)Math.Round(step / ten) switch { 1 => 2 * ten, 2 => 5 * ten, _ => 10 * ten };
        }

        int count = (int)Math.Max(1, Math.Ceiling((highest / step) - 1e-9));
        return [.. Enumerable.Range(0, count + 1).Select(i => i * step)];
    }

    /// <summary>Times from 0 to the end, in ticks.</summary>
    /// <param name="width">Of the axis, mm.</param>
    /// <param name="each">What the text of a time takes, mm.</param>
    public static IReadOnlyList<long> Times(long end, double width, double each)
    {
        double most = Math.Max(1, width / each);
        long step = Minutes.Select(m => m * Ticks.Minute).FirstOrDefault(s => end / (double)s <= most);
        step = step > 0 ? step : (long)Math.Ceiling(end / most / Ticks.Hour) * Ticks.Hour;
        return [.. Enumerable.Range(0, (int)(end / step) + 1).Select(i => i * step)];
    }
}
