using Floorplan.Language.Quantities;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Running;
using Floorplan.Sizing.Water.Pipes;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Water.Sizes;

/// <summary>Water drawn at once: the way the code counts, and as the day has it.</summary>
internal static class WaterPeak
{
    private static readonly Source DaySource =
        new("the day of the plan, run: what is in use at one moment draws its whole flow", Origin.OwnAssumption);

    /// <summary>All of it, by fixture units.</summary>
    public static Figure ByUnits(IReadOnlyList<WaterDraw> draws, Workings w)
    {
        double total = draws.Sum(d => d.Units?.Total ?? 0);
        var units = w.Of(
            "fixture units of water", Figure.WholePlan, total, QuantityKind.Count, QuantityText.Plain(total) + " units",
            "sum of the units of the sinks, cold and hot together",
            total > 0
                ? WorkingText.Sum([.. draws.Where(d => d.Units is not null).Select(d => QuantityText.Plain(d.Units!.Total))])
                : "none",
            FixtureUnits.Source,
            [.. draws.Where(d => d.Units is not null).Select(d => FigureInput.Taken(
                d.Id, $"{QuantityText.Plain(d.Units!.Total)}, as a {d.Units.Row}", FixtureUnits.Source))]);
        double sinks = FixtureDemand.Gpm(total) * InchPound.CubicMetresPerGallon / 60;
        var fixtures = w.Of(
            "flow to sinks at once", Figure.WholePlan, sinks, Measure.Flow, "demand of the fixture units, from the table",
            $"{QuantityText.Plain(total)} units: {w.Text(sinks, Measure.Flow)}", FixtureDemand.Source,
            FigureInput.Of(units));
        List<WaterDraw> steady = [.. draws.Where(d => d.Flow > 0)];
        return w.Of(
            "water at once, by fixture units", Figure.WholePlan, sinks + steady.Sum(d => d.Flow), Measure.Flow,
            "flow to sinks + all flows that run on (IPC E102: continuous demand is added)",
            WorkingText.Sum([fixtures.Text, .. steady.Select(d => w.Text(d.Flow, Measure.Flow))]), FixtureDemand.Source,
            [FigureInput.Of(fixtures), .. steady.SelectMany(d => d.Inputs)]);
    }

    /// <summary>At the busiest moment of work, or in wash-down, and when that is; null where the day cannot be run.</summary>
    public static (Figure? Peak, string When) InDay(PlanFacts facts, IReadOnlyList<WaterDraw> draws, Workings w)
    {
        if (facts.Running is not { } running)
        {
            return (null, "");
        }

        var flows = draws.Where(d => !d.IsHose && d.RunsOn > 0).ToDictionary(d => d.Id, d => d.RunsOn, StringComparer.Ordinal);
        bool washes = draws.Any(d => d.Station?.IsHandSink == true);
        if (washes)
        {
            flows[RunningTimes.HandWash] = WaterDraw.HandTapFlow;
        }

        var (work, at) = running.Peak(flows);
        int hoses = WaterDraw.HosesAtOnce(facts, draws);
        double clean = hoses * WaterDraw.HoseFlow;
        bool cleans = clean >= work;
        var peak = w.Of(
            "water at once, in the day", Figure.WholePlan, Math.Max(work, clean), Measure.Flow,
            "the larger of: all that draws at the busiest moment of work; hoses in wash-down, one a person",
            $"the larger of {w.Text(work, Measure.Flow)} and {hoses} x {w.Text(WaterDraw.HoseFlow, Measure.Flow)}", DaySource,
            [
                .. draws.Where(d => d.Flow > 0).SelectMany(d => d.Inputs),
                .. washes
                    ? [FigureInput.Taken("a tap for hands", w.Text(WaterDraw.HandTapFlow, Measure.Flow), WaterDraw.HandTapSource)]
                    : Array.Empty<FigureInput>()]);
        return (peak, cleans ? "in wash-down" : $"{QuantityText.Time(Ticks.Seconds(at))} after the start");
    }
}
