using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Services;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Weights;

/// <summary>
/// The water that stands in heaters of which the plan says how much they hold. What the heaters themselves weigh it does not say.
/// </summary>
internal static class HeaterWater
{
    private static readonly Source Water = new("water of 1000 kg/m³", Origin.FromMemory);

    /// <summary>Null where no heater says it.</summary>
    public static WeightPart? Of(Plan plan)
    {
        var held = plan.Services.OfType<Heater>()
            .Select(s => (Heater: s, Litres: s.Ratings.FirstOrDefault(r => r.Unit?.Kind == QuantityKind.Volume)))
            .Where(p => p.Litres.Unit is not null)
            .ToList();
        double volume = held.Sum(p => p.Litres.Base);
        if (volume <= 0)
        {
            return null;
        }

        double kilograms = volume * ItemWeight.WaterDensity;
        var full = Make(plan, "weight of water in heaters, full", kilograms, [
            .. held.Select(p => FigureInput.Said("volume", QuantityText.Of(p.Litres, plan.Units), p.Heater.Span))],
            $"{QuantityText.Of(volume, Measure.Liquid, plan.Units)} x {WorkingText.Density(ItemWeight.WaterDensity, plan.Units)}");
        var empty = Make(plan, "weight of water in heaters, empty", 0, [], "none");
        return new WeightPart(
            "water in heaters", empty, full, default, Moment.Sum(held.Select(p => Moment.Of(
                p.Litres.Base * ItemWeight.WaterDensity, p.Heater.At.X.Millimetres, p.Heater.At.Y.Millimetres))));
    }

    private static Figure Make(Plan plan, string name, double kilograms, IReadOnlyList<FigureInput> inputs, string substituted) => new()
    {
        Name = name,
        Of = Figure.WholePlan,
        Value = kilograms,
        Kind = QuantityKind.Mass,
        Text = QuantityText.Of(kilograms, Measure.Mass, plan.Units),
        Inputs = inputs,
        Formula = "volume x weight of water",
        Substituted = substituted,
        Source = Water,
    };
}
