using System.Globalization;
using Floorplan.Model;
using Floorplan.Model.Services;
using Floorplan.Sizing.Uses;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power;

/// <summary>What hangs on one circuit, as the plan says it.</summary>
/// <param name="Points">Outlets, switches and heaters.</param>
/// <param name="Machines">Stations that draw power from it.</param>
/// <param name="Load">What machines and heaters draw together; null when none says a power.</param>
public sealed record CircuitLoad(string Circuit, IReadOnlyList<CircuitPoint> Points, IReadOnlyList<ServiceUse> Machines, Figure? Load)
{
    /// <summary>In the order of their numbers; then those with names.</summary>
    internal static IReadOnlyList<CircuitLoad> Of(Plan plan, IReadOnlyList<ServiceUse> uses)
    {
        var points = plan.Services.OfType<CircuitPoint>().Where(s => s.Circuit.Length > 0).ToLookup(s => s.Circuit, StringComparer.Ordinal);
        var loads = uses.Where(u => u.Circuit.Length > 0).ToLookup(u => u.Circuit, StringComparer.Ordinal);
        return
        [
            .. points.Select(p => p.Key).Union(loads.Select(l => l.Key), StringComparer.Ordinal)
                .OrderBy(Number).ThenBy(name => name, StringComparer.Ordinal)
                .Select(name => new CircuitLoad(
                    name,
                    [.. points[name]],
                    [.. loads[name].Where(u => u.Station is not null)],
                    LoadSum.Of("load of the circuit", "circuit " + name, loads[name], plan.Units))),
        ];
    }

    private static int Number(string circuit)
        => int.TryParse(circuit, NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : int.MaxValue;
}
