using Floorplan.Drawing.Scene;
using Floorplan.Sizing.Simulation.Charts;

namespace Floorplan.Drawing.Charts;

/// <summary>The outline of one state in the stacked slots of a lane: a ring for each run of slots that have it.</summary>
internal static class LaneBands
{
    /// <summary>A thinner band cannot be printed, mm; what is left out is no more than one line is wide.</summary>
    private const double Thinnest = 0.1;

    /// <param name="below">The states that are stacked under it.</param>
    /// <param name="x">Where each slot begins, and the last ends.</param>
    public static IReadOnlyList<IReadOnlyList<PaperPoint>> Of(
        DayLane lane, DayState state, IReadOnlyList<DayState> below, IReadOnlyList<double> x, double foot, double height)
    {
        var rings = new List<IReadOnlyList<PaperPoint>>();
        for (int first = 0; first < lane.Slots.Count; first++)
        {
            int end = first;
            while (end < lane.Slots.Count && lane.Share(end, state) * height >= Thinnest)
            {
                end++;
            }

            if (end > first)
            {
                double Low(int slot) => Y(foot - (below.Sum(b => lane.Share(slot, b)) * height));
                double High(int slot) => Y(foot - ((below.Sum(b => lane.Share(slot, b)) + lane.Share(slot, state)) * height));
                var over = Edge(first, end, x, High);
                var under = Edge(first, end, x, Low);
                under.Reverse();
                rings.Add([.. over, .. under]);
                first = end;
            }
        }

        return rings;
    }

    /// <summary>Steps from left to right, without points that change nothing.</summary>
    private static List<PaperPoint> Edge(int first, int end, IReadOnlyList<double> x, Func<int, double> y)
    {
        var edge = new List<PaperPoint> { new(Y(x[first]), y(first)) };
        for (int slot = first; slot < end; slot++)
        {
            if (slot > first && !y(slot).Equals(y(slot - 1)))
            {
                edge.Add(new(Y(x[slot]), y(slot - 1)));
                edge.Add(new(Y(x[slot]), y(slot)));
            }
        }

        edge.Add(new(Y(x[end]), y(end - 1)));
        return edge;
    }

    /// <summary>To hundredths of a millimetre, which is finer than any printer; files stay small.</summary>
    private static double Y(double value) => Math.Round(value, 2);
}
