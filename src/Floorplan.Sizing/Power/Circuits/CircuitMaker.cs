using System.Globalization;
using Floorplan.Model;
using Floorplan.Model.Services;
using Floorplan.Sizing.Power.Loads;
using Floorplan.Sizing.Power.Panels;

namespace Floorplan.Sizing.Power.Circuits;

/// <summary>Which loads hang together, and on which panel.</summary>
/// <param name="Name">As written, or a free number.</param>
internal sealed record CircuitGroup(string Name, bool IsProposed, IReadOnlyList<PowerLoad> Loads, Panel? Panel);

/// <summary>
/// Circuits as the plan names them; then one for each load that names none, and lamps together until a small circuit is full. Own
/// assumption.
/// </summary>
internal static class CircuitMaker
{
    /// <summary>Lamps on one proposed circuit, in VA: 80 % of 15 A at 120 V.</summary>
    private const double UsLamps = 1440;

    /// <summary>Lamps on one proposed circuit, in VA: 80 % of 10 A at 230 V.</summary>
    private const double IecLamps = 1840;

    public static IReadOnlyList<CircuitGroup> Of(Plan plan, IReadOnlyList<PowerLoad> loads)
    {
        var panels = plan.Services.OfType<Panel>().Select(p => (Panel: p, System: PanelSystem.Of(p, plan.Head.Code))).ToList();
        var said = loads.Where(l => l.Circuit.Length > 0).GroupBy(l => l.Circuit, StringComparer.Ordinal)
            .OrderBy(g => Number(g.Key)).ThenBy(g => g.Key, StringComparer.Ordinal).ToList();
        var groups = said.ConvertAll(g => Made(g.Key, false, [.. g], panels));
        var free = FreeNumbers([.. said.Select(g => g.Key)]).GetEnumerator();
        foreach (var group in Alone(loads, plan.Head.Code == CodeChoice.Us ? UsLamps : IecLamps))
        {
            free.MoveNext();
            groups.Add(Made(free.Current, true, group, panels));
        }

        return groups;
    }

    private static CircuitGroup Made(string name, bool proposed, List<PowerLoad> loads, List<(Panel Panel, PanelSystem System)> panels)
    {
        var largest = loads.MaxBy(l => l.Draws.Value)!;
        var giving = panels.FindAll(p => p.System.Nearest(largest.Volts, largest.Phases) is { } volts
            && Math.Abs(volts - largest.Volts) <= PanelSystem.Near * largest.Volts);
        var nearest = (giving.Count > 0 ? giving : panels).Select(p => p.Panel).MinBy(p => CableRoute.OnPlan(p, largest));
        return new CircuitGroup(name, proposed, loads, nearest);
    }

    private static IEnumerable<List<PowerLoad>> Alone(IReadOnlyList<PowerLoad> loads, double mostLamps)
    {
        var lamps = new List<PowerLoad>();
        double sum = 0;
        foreach (var load in loads.Where(l => l.Circuit.Length == 0).OrderBy(l => l.Kind == PowerLoadKind.Light))
        {
            if (load.Kind != PowerLoadKind.Light)
            {
                yield return [load];
                continue;
            }

            if (lamps.Count > 0 && sum + load.Draws.Value > mostLamps)
            {
                yield return lamps;
                lamps = [];
                sum = 0;
            }

            lamps.Add(load);
            sum += load.Draws.Value;
        }

        if (lamps.Count > 0)
        {
            yield return lamps;
        }
    }

    private static IEnumerable<string> FreeNumbers(HashSet<string> taken)
    {
        for (int number = 1; ; number++)
        {
            string name = number.ToString(CultureInfo.InvariantCulture);
            if (!taken.Contains(name))
            {
                yield return name;
            }
        }
    }

    private static int Number(string circuit)
        => int.TryParse(circuit, NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : int.MaxValue;
}
