using Floorplan.Language.Quantities;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Plans;
using Floorplan.Sizing.Sizes;
using Floorplan.Sizing.Water.Ice;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Water.Hot;

/// <summary>Hot water and ice, for the subject and what goes on from it.</summary>
/// <param name="Hour">Null where the day cannot be run.</param>
/// <param name="Heat">J a day, for hot water and what open tanks lose; null where the day cannot be run.</param>
public sealed record HotWaterSized(SizedSubject Subject, HotWaterHour? Hour, SaidHeater Heater, Figure? Heat = null)
{
    /// <summary>A store is heated again in so long, s; own choice.</summary>
    private const double Recovery = 2 * 3600;

    private static readonly Source Own = new(
        "own choice: a store that gives the highest hour alone, and is hot again in two hours", Origin.OwnAssumption);

    /// <summary>Null where nothing takes hot water or ice.</summary>
    public static HotWaterSized? Of(PlanFacts facts)
    {
        var w = new Workings(facts.Plan.Units);
        var ice = DayIce.Of(facts, w);
        if (!facts.Uses.Of(NeedKind.HotWater).Any() || facts.WaterPiping is not { } water)
        {
            return ice is null
                ? null
                : new HotWaterSized(
                    new SizedSubject("Ice", [SizeRow.Of("ice a day", ice)]) { Figures = w.Figures }, null, new SaidHeater(null, null));
        }

        var basis = HotWaterBasis.Of(facts, water.Draws, water.Network.Heater);
        var hour = HotWaterHour.Of(facts, water.Draws, basis, w);
        var heater = SaidHeater.Of(facts, basis, w);
        var tanks = HeatedTank.Of(facts, basis, w);
        var rows = new List<SizeRow>();
        if (hour is not null)
        {
            rows.Add(SizeRow.Of(
                "highest hour", hour.Litres,
                $"{hour.When}; of {w.Text(basis.Store, Measure.Temperature)}, comes in at {w.Text(basis.Cold, Measure.Temperature)}"));
            rows.AddRange(Proposed(hour, basis, w));
        }

        if (heater.Gives is { } gives)
        {
            rows.Add(SizeRow.Of($"heater {heater.First!.Id} gives in an hour", gives));
        }

        rows.AddRange(tanks.Select(t => t.Hours is { } hours
            ? SizeRow.Of($"{t.Station.Id} hot from cold", hours, $"{t.HeatUp!.Text}; then loses {t.Loss.Text}")
            : SizeRow.Of($"{t.Station.Id} loses", t.Loss)));
        var energy = EnergyOf(facts, hour, tanks, w);
        if (energy is not null)
        {
            rows.Add(SizeRow.Of("heat a day", energy, HandMix(water.Draws, basis)));
        }

        if (ice is not null)
        {
            rows.Add(SizeRow.Of("ice a day", ice));
        }

        var subject = new SizedSubject("Hot water", rows)
        {
            Figures = w.Figures,
            Missing = [.. Missing(facts, heater, ice)],
            Cautions =
            [
                "Hot water scalds: mixing valves at hand sinks, a relief valve and its drain at every heater; a licensed plumber and "
                    + "electrician connect it by the local code.",
            ],
        };
        return new HotWaterSized(subject, hour, heater, energy);
    }

    private static IEnumerable<SizeRow> Proposed(HotWaterHour hour, HotWaterBasis basis, Workings w)
    {
        double volume = hour.Litres.Value / SaidHeater.UsableShare;
        var store = w.Of(
            "store that gives the highest hour", Figure.WholePlan, volume, Measure.Liquid, "highest hour / 70 %",
            $"{hour.Litres.Text} / 0.7", SaidHeater.StoreSource, FigureInput.Of(hour.Litres));
        var power = w.Of(
            "power to heat that store again", Figure.WholePlan, WaterHeat.Energy(volume, basis.Rise) / Recovery, Measure.Power,
            "store x heat of water x rise / 2 h",
            $"{store.Text} x 1000 x 4186 x {w.Text(basis.Rise, Measure.TemperatureDifference)} / 2 h", Own, FigureInput.Of(store),
            basis.ColdInput, basis.StoreInput);
        yield return SizeRow.Of("storage heater", store, "with " + power.Text);
        yield return SizeRow.Of(
            "or heater without store",
            w.Of(
                "power of a heater without store", Figure.WholePlan, WaterHeat.Energy(hour.Litres.Value, basis.Rise) / 3600, Measure.Power,
                "highest hour x heat of water x rise / 1 h",
                $"{hour.Litres.Text} x 1000 x 4186 x {w.Text(basis.Rise, Measure.TemperatureDifference)} / 1 h", WaterHeat.Source,
                FigureInput.Of(hour.Litres), basis.ColdInput, basis.StoreInput),
            "on average of that hour");
    }

    private static Figure? EnergyOf(PlanFacts facts, HotWaterHour? hour, IReadOnlyList<HeatedTank> tanks, Workings w)
    {
        if (hour is null || DayFrame.Of(facts.Plan, facts.Day) is not { } frame)
        {
            return null;
        }

        double seconds = Ticks.Seconds(frame.HandsEnd);
        return w.Of(
            "heat for hot water and tanks in a day", Figure.WholePlan, hour.Day.Value + (tanks.Sum(t => t.Loss.Value) * seconds),
            Measure.Energy, "heat in the hot water + losses of open tanks x time of work",
            WorkingText.Sum([hour.Day.Text, .. tanks.Select(t => $"{t.Loss.Text} x {QuantityText.Time(seconds)}")]), WaterHeat.Source,
            [FigureInput.Of(hour.Day), .. tanks.Select(t => FigureInput.Of(t.Loss))]);
    }

    private static string HandMix(IReadOnlyList<Sizes.WaterDraw> draws,
        HotWaterBasis basis) => draws.Any(d => d.Station?.IsHandSink == true)
        ? "hand sinks mix in " + QuantityText.Of(
            WaterHeat.HotShare(basis.Cold, basis.Store, basis.Hands), Measure.Ratio, UnitSystem.Metric) + " hot"
        : "";

    private static IEnumerable<NotSaid> Missing(PlanFacts facts, SaidHeater heater, Figure? ice)
    {
        var plan = facts.Plan;
        if (heater.Gives is null)
        {
            yield return new NotSaid(
                heater.First is null ? "a heater" : $"power of heater {heater.First.Id}",
                plan.Units == UnitSystem.Metric
                    ? "heater wh1 in ROOM, north wall, 300 from west, 9 kW 150 L"
                    : "heater wh1 in ROOM, north wall, 12 in from west, 9 kW 40 gal",
                heater.First?.Span ?? plan.Head.Span);
        }

        if (ice is null && facts.Uses.Of(NeedKind.Ice).FirstOrDefault() is { } use)
        {
            yield return new NotSaid("ice a day: weight of a product or the day's target", "`product birds, 2 kg each` in the plan's head",
                use.Span);
        }
    }
}
