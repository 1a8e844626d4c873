using Floorplan.Language.Quantities;
using Floorplan.Sizing.Power.Loads;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Plans;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power.Sizes;

/// <summary>
/// Energy of one day, as if all of it were bought as electricity: machines, lamps, hot water and cold rooms. Outlets that nothing hangs on
/// are left out.
/// </summary>
internal static class DayEnergy
{
    /// <summary>Power of a motor or machine over its VA.</summary>
    private const double PowerFactor = 0.85;

    /// <summary>Heat that a small cooling unit carries away for each unit of energy.</summary>
    private const double Performance = 2;

    private const double Day = 24 * 3600;

    private static readonly Source Factor = new("power factor 0.85 of machines; own assumption", Origin.OwnAssumption);
    private static readonly Source Cooling = new("a small cooling unit carries away twice the energy it takes; own assumption",
        Origin.OwnAssumption);
    private static readonly Source Run = new(
        "one simulated day at the pace of the target; what is not on the line runs all through work", Origin.OwnAssumption);
    private static readonly Source Sum = new("sum", Origin.CommonPractice);

    /// <summary>Null where the day cannot be run or nothing takes energy.</summary>
    public static Figure? Of(PlanFacts facts, IReadOnlyList<PowerLoad> loads, Workings w)
    {
        if (facts.Running is not { } running || DayFrame.Of(facts.Plan, facts.Day) is not { } frame)
        {
            return null;
        }

        double work = Ticks.Seconds(frame.HandsEnd);
        var heat = facts.HotWaterSized?.Heat;
        var hot = heat is null ? [] : facts.HotTanks.Select(t => t.Station.Id).ToHashSet(StringComparer.Ordinal);
        List<Figure> parts = [.. loads.Where(l => l.Kind is PowerLoadKind.Machine or PowerLoadKind.Motor && !hot.Contains(l.Id))
            .Select(l => OfMachine(l, running.Seconds(l.Id) ?? work))];
        var lamps = loads.Where(l => l.Kind == PowerLoadKind.Light).ToList();
        if (lamps.Count > 0)
        {
            double seconds = Ticks.Seconds(frame.CrewTime);
            double draws = lamps.Sum(l => l.Draws.Value);
            parts.Add(w.Of(
                "energy of lamps", Figure.WholePlan, draws * seconds, Measure.Energy, "what lamps draw x time that the crew is there",
                $"{w.Text(draws, Measure.Power)} x {QuantityText.Time(seconds)}", Run, [.. lamps.Select(l => FigureInput.Of(l.Draws))]));
        }

        parts.AddRange(heat is null ? [] : [heat]);
        parts.AddRange(facts.ColdRooms.Select(c => w.Of(
            "energy of cooling", c.Room.Id, c.Load.Value * Day / Performance, Measure.Energy,
                "load x 24 h / heat carried away by one of energy",
            $"{c.Load.Text} x 24 h / {QuantityText.Plain(Performance)}", Cooling, FigureInput.Of(c.Load),
            FigureInput.Taken("heat carried away by one of energy", QuantityText.Plain(Performance), Cooling))));
        return parts.Sum(p => p.Value) <= 0 ? null : w.Of(
            "energy a day", Figure.WholePlan, parts.Sum(p => p.Value), Measure.Energy, "machines + lamps + hot water + cold rooms",
            WorkingText.Sum([.. parts.Select(p => p.Text)]), Sum, [.. parts.Select(FigureInput.Of)]);

        Figure OfMachine(PowerLoad load, double seconds) => w.Of(
            "energy of a machine", load.Id, load.Draws.Value * PowerFactor * seconds, Measure.Energy,
                "what it draws x power factor x time in use",
            $"{load.Draws.Text} x {QuantityText.Plain(PowerFactor)} x {QuantityText.Time(seconds)}", Run, FigureInput.Of(load.Draws),
            FigureInput.Taken("power factor", QuantityText.Plain(PowerFactor), Factor));
    }
}
