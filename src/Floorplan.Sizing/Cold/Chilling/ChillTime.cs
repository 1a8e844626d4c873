using Floorplan.Language.Quantities;
using Floorplan.Model.Rooms;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Cold.Products;
using Floorplan.Sizing.Processing;
using Floorplan.Sizing.Simulation.Plans;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Cold.Chilling;

/// <summary>How long a product takes to be cold where it stays in cold water or a cold room; an estimate.</summary>
/// <param name="Product">Its index in the plan's head.</param>
/// <param name="Seconds">Until its middle is cold; null where it never is.</param>
/// <param name="Said">How long the plan lets it stay, s.</param>
/// <param name="Around">What cools it, as printed: <c>water of 1 °C</c>.</param>
public sealed record ChillTime(Station Station, int Product, Figure? Seconds, double Said, string Around)
{
    /// <summary>Why there is no estimate; null where there is one, or where it is never cold.</summary>
    public string? Unknown { get; private init; }

    private const double BodyWarm = 38;
    private const double IceWater = 1;
    private const double Mains = 10;

    /// <summary>40 F.</summary>
    private const double Cold = 4.4;

    /// <summary>Below this a room freezes.</summary>
    private const double Freezes = -5;

    /// <summary>Frozen through, above what the room keeps, K.</summary>
    private const double Left = 4;

    /// <summary>W/m2K; of stirred water, and of air that fans move at about 0.75 m/s.</summary>
    private const double WaterFilm = 500;
    private const double AirFilm = 15;
    private const double FrozenConductivity = 1.4;

    private static readonly Source Own = new("own assumption", Origin.OwnAssumption);
    private static readonly Source Fitted = new(
        "ASHRAE Refrigeration, cooling times by f and j; a bird as a slab fitted to 43 min in ice water", Origin.FoundInPublicCopy);
    private static readonly Source Box = new(
        "ASHRAE Refrigeration, cooling times by f and j; a box of 1 to 3 to 6, own assumption", Origin.OwnAssumption);
    private static readonly Source Frozen = new("Pham 1986, a slab", Origin.FromMemory);
    private static readonly Source Former = new("former 9 CFR 381.66(b)(2): 40 °F", Origin.FoundInPublicCopy);

    /// <summary>Heavier pieces are no food, kg; own bound.</summary>
    private const double Heaviest = 2000;

    /// <summary>Stations that say how long product stays in cold water or in a cold room, with each product.</summary>
    internal static IReadOnlyList<ChillTime> Of(PlanFacts facts, Workings w) =>
    [
        .. from station in facts.Plan.Stations
           where station.Stays is { Unit.Kind: QuantityKind.Time }
           let around = AroundIt(facts, station)
           where around is not null
           from product in facts.Plan.Head.Products.Index()
           let food = ProductHeats.Of(product.Item.Unit)
           let unknown = food.Parts is null ? $"no published figure for {product.Item.Unit}"
               : PlannedLine.ItemKilograms(facts.Plan, product.Index) is > 0 and < Heaviest ? null
               : $"what one weighs is not said; write `product {product.Item.Unit}, 2 kg each`"
           select unknown is null
               ? Make(facts, w, station, product.Index, food, around.Value)
               : new ChillTime(station, product.Index, null, station.Stays!.Value.Base, "") { Unknown = unknown },
    ];

    private static (double Celsius, bool IsWater, FigureInput Input)? AroundIt(PlanFacts facts, Station station)
    {
        var units = facts.Plan.Units;
        bool ice = station.Needs.Any(n => n.Kind == NeedKind.Ice);
        if (ice || (station.Is(KnownProcess.Chilling) && station.Needs.Any(n => n.Kind == NeedKind.ColdWater)))
        {
            var mains = facts.Plan.Head.Mains;
            double? said = !ice && mains?.Temperature is { } cold && DesignAir.Fits(cold.Base) ? cold.Base : null;
            double celsius = said ?? (ice ? IceWater : Mains);
            string text = QuantityText.Of(celsius, Measure.Temperature, units);
            return (celsius, true, said is not null
                ? FigureInput.Said("water", text, mains!.Span)
                : FigureInput.Taken(ice ? "ice water" : "water", text, Own));
        }

        return station.Room is { Class: HygieneClass.Cold, KeepCelsius: { } keep } && DesignAir.Fits(keep)
            ? (keep, false, DesignAir.In(facts.Plan, station.Room).Temperature)
            : null;
    }

    private static ChillTime Make(
        PlanFacts facts, Workings w, Station station, int index, ProductHeat food, (double Celsius, bool IsWater, FigureInput Input) around)
    {
        var product = facts.Plan.Head.Products[index];
        double kilograms = product.WeightEach!.Value.Base;
        bool isBird = food.Name == "poultry";
        bool freezes = !around.IsWater && around.Celsius < Freezes;
        double to = freezes ? around.Celsius + Left : Cold;
        double from = food.Name == "fish" ? DesignAir.UsualRoom : BodyWarm;
        double? seconds = freezes
            ? Frost(kilograms, food, isBird, from, to, around.Celsius)
            : Curve(kilograms, food, isBird, around.IsWater).Seconds(from, to, around.Celsius);
        string name = $"{(freezes ? "freezing" : "cooling")} {product.Unit}";
        string warm = w.Text(from, Measure.Temperature);
        string cold = w.Text(to, Measure.Temperature);
        var figure = seconds is not { } time ? null : w.Of(
            name, station.Id, time, QuantityKind.Time, QuantityText.Time(time),
            freezes ? "half / film x (H1/ΔT1 + H2/ΔT2) x (1 + film x half / 2k)" : "f log10(j x (from - around) / (to - around))",
            $"{w.Fine(kilograms, Measure.Mass)} from {warm} to {cold} in {around.Input.Text}", freezes ? Frozen : isBird ? Fitted : Box,
            FigureInput.Said("weight of one", w.Fine(kilograms, Measure.Mass), facts.Plan.Head.Span),
            FigureInput.Taken("from", warm, Own),
            FigureInput.Taken("to", cold, freezes ? Own : Former), around.Input);
        return new ChillTime(
            station, index, figure, station.Stays!.Value.Base, $"{(around.IsWater ? "water" : "air")} of {around.Input.Text}");
    }

    private static CoolingCurve Curve(double kilograms, ProductHeat food, bool isBird, bool inWater) => (isBird, inWater) switch
    {
        (true, true) => BirdChilling.InWater(kilograms),
        (true, false) => BirdChilling.InAir(kilograms, AirFilm),
        _ => SolidBody.Curve(kilograms, food.Parts!, inWater ? WaterFilm : AirFilm),
    };

    private static double? Frost(double kilograms, ProductHeat food, bool isBird, double from, double to, double around)
    {
        double density = food.Parts!.Density(0);
        double half = isBird ? BirdChilling.Half(kilograms) : SolidBody.Thickness(kilograms, density) / 2;
        return Freezing.Pham(
            half, AirFilm, FrozenConductivity, density, food.Above * 1000, food.Below * 1000, food.Latent * 1000, from, to, around);
    }
}
