using Floorplan.Sizing.Power.Circuits;

namespace Floorplan.Sizing.Power.Panels;

/// <summary>
/// Shares circuits out to the lines of a panel: those on all lines first, then each other one, from the largest, to the lines that carry
/// least so far. Own assumption; the electrician may share out otherwise.
/// </summary>
internal static class PanelBalance
{
    public static IReadOnlyList<PanelWay> Of(PanelSystem system, IEnumerable<SizedCircuit> circuits)
    {
        double[] sums = new double[system.Lines];
        var ways = new List<PanelWay>();
        foreach (var (circuit, lines) in circuits.Select(c => (Circuit: c, Lines: system.LinesOf(c.Volts, c.Phases)))
            .OrderByDescending(c => c.Lines == system.Lines).ThenByDescending(c => c.Circuit.Draws.Value))
        {
            double[] on = new double[system.Lines];
            foreach (int line in Enumerable.Range(0, system.Lines).OrderBy(i => sums[i]).Take(lines).ToList())
            {
                on[line] = circuit.Draws.Value / lines;
                sums[line] += on[line];
            }

            ways.Add(new PanelWay(circuit, on));
        }

        return ways;
    }

    /// <summary>VA on each line.</summary>
    public static double[] Sums(PanelSystem system, IReadOnlyList<PanelWay> ways)
        => [.. Enumerable.Range(0, system.Lines).Select(i => ways.Sum(w => w.OnLines[i]))];
}
