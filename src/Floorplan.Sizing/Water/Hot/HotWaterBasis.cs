using Floorplan.Language.Quantities;
using Floorplan.Model.Services;
using Floorplan.Sizing.Water.Sizes;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Water.Hot;

/// <summary>The temperatures that hot water is reckoned with, °C.</summary>
/// <param name="Cold">Of the water that comes in.</param>
/// <param name="Store">That the heater keeps.</param>
/// <param name="Hands">Of mixed water at a basin.</param>
/// <param name="Hose">Of mixed water from a hose on a hot point.</param>
internal sealed record HotWaterBasis(double Cold, double Store, double Hands, double Hose, FigureInput ColdInput, FigureInput StoreInput)
{
    private const double UsualCold = 10;
    private const double UsualStore = 60;
    private const double UsualHands = 40;
    private const double UsualHose = 50;

    public static Source ColdSource { get; } = new("own assumption: ground water in winter", Origin.OwnAssumption);

    /// <summary>Water that is kept hot.</summary>
    public static Source StoreSource { get; } =
        new("HSE L8: hot water is stored at 60 °C or more, against legionella", Origin.FromMemory);

    public static Source MixSource { get; } =
        new("own assumption: hands 40 °C, hoses 50 °C; the Food Code asks for 29.4 °C or more at hand sinks", Origin.OwnAssumption);

    public static HotWaterBasis Of(PlanFacts facts, IReadOnlyList<WaterDraw> draws, Heater? heater)
    {
        var units = facts.Plan.Units;
        var mains = facts.Plan.Head.Mains;
        double cold = mains?.Temperature?.Base ?? UsualCold;
        var coldInput = mains?.Temperature is not null
            ? FigureInput.Said("water that comes in", Text(cold), mains.Span)
            : FigureInput.Taken("water that comes in", Text(cold), ColdSource);
        var said = heater?.Ratings.FirstOrDefault(r => r.Unit?.Kind == QuantityKind.Temperature);
        if (said is { Unit: not null } kept)
        {
            return new HotWaterBasis(
                cold, kept.Base, UsualHands, UsualHose, coldInput, FigureInput.Said("water in the heater", Text(kept.Base), heater!.Span));
        }

        var hottest = draws.Where(d => d.Hot > 0 && d.HotAt > UsualStore).MaxBy(d => d.HotAt);
        return hottest is null
            ? new HotWaterBasis(
                cold, UsualStore, UsualHands, UsualHose, coldInput, FigureInput.Taken("water in the heater", Text(UsualStore), StoreSource))
            : new HotWaterBasis(
                cold, hottest.HotAt!.Value, UsualHands, UsualHose, coldInput,
                FigureInput.Said($"water in the heater, as {hottest.Id} needs it", Text(hottest.HotAt.Value), hottest.Station!.Span));

        string Text(double celsius) => QuantityText.Of(celsius, Measure.Temperature, units);
    }

    /// <summary>K; 0 where the store is no hotter than what comes in.</summary>
    public double Rise => Math.Max(0, Store - Cold);

    /// <summary>°C that a draw of hot water takes from the heater.</summary>
    public double Taken(double? asked) => Math.Min(Store, asked ?? Store);
}
