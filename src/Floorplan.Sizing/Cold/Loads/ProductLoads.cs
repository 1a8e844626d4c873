using Floorplan.Language.Quantities;
using Floorplan.Language.Quantities.Heat;
using Floorplan.Model.Rooms;
using Floorplan.Sizing.Cold.Products;
using Floorplan.Sizing.Simulation.Plans;
using Floorplan.Sizing.Sizes;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Cold.Loads;

/// <summary>Heat out of what the day brings into a cold room, spread over day and night.</summary>
internal sealed class ProductLoads(PlanFacts facts, Room room, Workings w)
{
    /// <summary>What comes out of a chill tank, C.</summary>
    private const double Chilled = 4;

    private const double SecondsPerDay = 24 * 3600;

    private static readonly Source Sum = new("weight x heat out of a kilogram, over 24 h", Origin.CommonPractice);
    private static readonly Source Heats = new("specific heats above and below freezing, and latent heat", Origin.CommonPractice);
    private static readonly Source TankSource = new("as cold as a chill tank leaves it; own assumption", Origin.OwnAssumption);
    private static readonly Source Run = new("the day of the plan", Origin.OwnAssumption);

    private readonly DesignAir inside = DesignAir.In(facts.Plan, room);

    /// <param name="day">Of the room.</param>
    /// <param name="missing">What the plan does not say is added.</param>
    public IEnumerable<ColdLoad> All(RoomDay day, List<NotSaid> missing)
    {
        foreach (var product in facts.Day.Planned.Products)
        {
            if (PlannedLine.ItemKilograms(facts.Plan, product.Product) is not { } each)
            {
                missing.Add(new NotSaid(
                    $"weight of {product.Unit}, for the heat that they bring into {room.Id}", $"product {product.Unit}, 1 kg each",
                    facts.Plan.Head.Span));
                continue;
            }

            foreach (var (number, arrival) in day.Arrivals.Index())
            {
                yield return Of(product, each, arrival, number);
            }
        }
    }

    private ColdLoad Of(PlannedProduct product, double each, Arrival arrival, int number)
    {
        var units = w.Units;
        string which = number == 0 ? product.Unit : FormattableString.Invariant($"{product.Unit}, way {number + 1}");
        double kilograms = product.Line.Supply.Items * each * arrival.Share;
        string items = QuantityText.Plain(product.Line.Supply.Items * arrival.Share, 0);
        var weight = w.Of(
            $"{which} in a day", room.Id, kilograms, Measure.Mass, "items that come in x weight of one",
            $"{items} x {w.Fine(each, Measure.Mass)}", Run,
            FigureInput.Said("items that come in", items, facts.Plan.Day?.Span ?? facts.Plan.Head.Span),
            FigureInput.Said("weight of one", w.Fine(each, Measure.Mass), facts.Plan.Head.Span));
        var (from, warm) = From(arrival);
        var food = ProductHeats.Of(product.Unit);
        double given = food.PerKilogram(from, inside.Celsius);
        string above = HeatText.SpecificHeat(food.Above, units);
        bool freezes = from > food.Freezes && inside.Celsius < food.Freezes;
        var heat = w.Of(
            $"heat out of {which}", room.Id, given, QuantityKind.Ratio, HeatText.PerWeight(given, units),
            "specific heat x what it is cooled by" + (freezes ? ", and the heat of freezing and below" : ""),
            freezes
                ? $"{above} x ({warm.Text} - {w.Text(food.Freezes, Measure.Temperature)}) + {HeatText.PerWeight(food.Latent, units)} + "
                    + $"{HeatText.SpecificHeat(food.Below, units)} x "
                    + $"({w.Text(food.Freezes, Measure.Temperature)} - {inside.Temperature.Text})"
                : $"{above} x ({warm.Text} - {inside.Temperature.Text})",
            Heats, FigureInput.Taken($"specific heat of {food.Name}", above, food.Source), warm, inside.Temperature);
        var load = w.Of(
            $"load of {which}", room.Id, kilograms * given * 1000 / SecondsPerDay, Measure.Heat, "weight x heat out of each, over 24 h",
            $"{weight.Text} x {heat.Text} / 24 h", Sum, FigureInput.Of(weight), FigureInput.Of(heat));
        return new ColdLoad(
            which, $"{weight.Text} a day from {warm.Text}",
            w.Text(Math.Max(0, from - inside.Celsius), Measure.TemperatureDifference), load);
    }

    private (double Celsius, FigureInput Input) From(Arrival arrival)
    {
        if (arrival.WasChilled)
        {
            return (Chilled, FigureInput.Taken("coming in", w.Text(Chilled, Measure.Temperature), TankSource));
        }

        var air = DesignAir.In(facts.Plan, arrival.From);
        return (air.Celsius, air.Temperature);
    }
}
