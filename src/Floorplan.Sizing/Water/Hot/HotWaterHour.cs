using Floorplan.Language.Quantities;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Plans;
using Floorplan.Sizing.Simulation.Running;
using Floorplan.Sizing.Water.Sizes;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Water.Hot;

/// <summary>Heat that is drawn as hot water: in the highest hour, and in the day.</summary>
/// <param name="Litres">Of the highest hour, in m3 at the temperature of the heater.</param>
/// <param name="When">Which hour that is.</param>
/// <param name="Day">J that water takes in a day.</param>
public sealed record HotWaterHour(Figure Litres, string When, Figure Day)
{
    private static readonly Source Own = new(
        "the day of the plan, run: hot water while a station is in use, at basins half of the time, in wash-down half of the time; tanks "
            + "are filled hot in the hour before work", Origin.OwnAssumption);

    /// <summary>Null where the day cannot be run.</summary>
    internal static HotWaterHour? Of(PlanFacts facts, IReadOnlyList<WaterDraw> draws, HotWaterBasis basis, Workings w)
    {
        if (facts.Running is not { } running || DayFrame.Of(facts.Plan, facts.Day) is not { } frame || basis.Rise <= 0)
        {
            return null;
        }

        var powers = draws.Where(d => d.Station is not null && d.HotRunsOn > 0).ToDictionary(
            d => d.Id, d => WaterHeat.Power(d.HotRunsOn, basis.Taken(d.HotAt) - basis.Cold), StringComparer.Ordinal);
        if (draws.Any(d => d.Units is { Hot: > 0 } && d.Station!.IsHandSink))
        {
            powers[RunningTimes.HandWash] = WaterHeat.Power(WaterDraw.HandTapFlow * WaterDay.OpenShare, basis.Hands - basis.Cold);
        }

        var (work, from) = running.HighestHour(powers);
        double offLine = powers.Where(p => running.Seconds(p.Key) is null).Sum(p => p.Value);
        double workSeconds = Ticks.Seconds(frame.HandsEnd);
        work += offLine * Math.Min(3600, workSeconds);
        double fill = draws.Where(d => d.Hot > 0 && d.Station is not null)
            .Sum(d => WaterHeat.Energy(WaterDay.Volume(d.Station!) ?? 0, basis.Taken(d.HotAt) - basis.Cold));
        double hose = WaterHeat.Power(HotHoses(facts, draws) * WaterDraw.HoseFlow * WaterDay.OpenShare, basis.Hose - basis.Cold);
        double wash = hose * Math.Min(3600, Ticks.Seconds(frame.WashDown));
        var (joules, when) = new[]
        {
            (work, $"{QuantityText.Time(Ticks.Seconds(from))} after the start"), (fill, "filling before work"), (wash, "in wash-down"),
        }.MaxBy(h => h.Item1);
        double litres = joules / (WaterHeat.PerCubicMetre * basis.Rise);
        var hour = w.Of(
            "hot water in the highest hour", Figure.WholePlan, litres, Measure.Liquid,
            "heat that hands, stations, filling or wash-down take in an hour / (heat of water x rise of temperature)",
            $"{w.Text(joules, Measure.Energy)} / (1000 kg/m³ x 4186 J/(kg K) x {w.Text(basis.Rise, Measure.TemperatureDifference)})", Own,
            [basis.ColdInput, basis.StoreInput, .. draws.Where(d => d.Hot > 0).SelectMany(d => d.Inputs)]);
        double inUse = powers.Sum(p => p.Value * (running.Seconds(p.Key) ?? workSeconds));
        double cleaning = hose * Ticks.Seconds(frame.WashDown);
        var energy = w.Of(
            "heat in the hot water of a day", Figure.WholePlan, inUse + fill + cleaning, Measure.Energy, "in use + filling + wash-down",
            $"{w.Text(inUse, Measure.Energy)} + {w.Text(fill, Measure.Energy)} + {w.Text(cleaning, Measure.Energy)}", Own,
            basis.ColdInput, basis.StoreInput);
        return new HotWaterHour(hour, when, energy);
    }

    /// <summary>Hoses on a hot point, one a person.</summary>
    private static int HotHoses(PlanFacts facts, IReadOnlyList<WaterDraw> draws)
        => WaterDraw.HosesAtOnce(facts, draws.Where(d => facts.Uses.By(d.Id).Any(u => u.Kind == NeedKind.HotWater)));
}
