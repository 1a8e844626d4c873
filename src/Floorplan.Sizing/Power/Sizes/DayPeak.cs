using Floorplan.Language.Quantities;
using Floorplan.Sizing.Power.Loads;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power.Sizes;

/// <summary>
/// The most that is on at one moment of the day that the simulation runs. Lamps, heaters, outlets and machines that are not on the line
/// are taken as on all day.
/// </summary>
internal static class DayPeak
{
    private static readonly Source Own = new(
        "one simulated day at the pace of the target; a machine draws while it is in use, lamps, heaters and what is not on the line all "
            + "day", Origin.OwnAssumption);

    /// <summary>Null where the day cannot be run.</summary>
    public static Figure? Of(PlanFacts facts, IReadOnlyList<PowerLoad> loads, Workings workings)
    {
        if (facts.Running is not { } running)
        {
            return null;
        }

        var onLine = loads.Where(l => l.Kind is PowerLoadKind.Machine or PowerLoadKind.Motor && running.Stretches.ContainsKey(l.Id))
            .ToList();
        var byId = onLine.GroupBy(l => l.Id, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.Sum(l => l.Draws.Value), StringComparer.Ordinal);
        var (amount, at) = running.Peak(byId);
        double always = loads.Except(onLine).Sum(l => l.Draws.Value);
        string when = QuantityText.Time(Ticks.Seconds(at));
        return workings.Of(
            "highest load of the day", Figure.WholePlan, amount + always, Measure.ApparentPower,
            "machines of the line that run together at the busiest moment + all that is on all day",
            $"{workings.Fine(amount, Measure.ApparentPower)} (first {when} after the start of work) + "
                + workings.Fine(always, Measure.ApparentPower),
            Own, [.. loads.Select(l => FigureInput.Of(l.Draws))]);
    }
}
