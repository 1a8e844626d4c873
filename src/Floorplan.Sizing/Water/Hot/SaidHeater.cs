using Floorplan.Language.Quantities;
using Floorplan.Model.Services;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Water.Hot;

/// <summary>What the heaters of a plan give in an hour.</summary>
/// <param name="Gives">m3 at the temperature of the heater; null where no heater says a power.</param>
/// <param name="First">Null without a heater.</param>
public sealed record SaidHeater(Heater? First, Figure? Gives)
{
    /// <summary>Of a store that is full: the rest comes out cooler.</summary>
    public const double UsableShare = 0.7;

    public static Source StoreSource { get; } =
        new("a store gives 70 % of its water hot before it comes out cooler", Origin.CommonPractice);

    internal static SaidHeater Of(PlanFacts facts, HotWaterBasis basis, Workings w)
    {
        // A heater of a room is said with `heater` too; one that heats water says a volume, a flow or which of both it does.
        List<Heater> heaters = [.. facts.Plan.Services.OfType<Heater>()];
        double power = Rated(QuantityKind.Power);
        double store = heaters.Where(h => h.Form != Language.Words.Terms.HeaterForm.Instant)
            .SelectMany(h => h.Ratings).Where(r => r.Unit?.Kind == QuantityKind.Volume).Sum(r => r.Base);
        if (heaters.Count == 0 || power <= 0 || basis.Rise <= 0)
        {
            return new SaidHeater(heaters.FirstOrDefault(), null);
        }

        double litres = (UsableShare * store) + (power * 3600 / (WaterHeat.PerCubicMetre * basis.Rise));
        return new SaidHeater(heaters[0], w.Of(
            "hot water that the heater gives in an hour", Figure.WholePlan, litres, Measure.Liquid,
            "70 % of its store + power x 1 h / (heat of water x rise)",
            $"0.7 x {w.Text(store, Measure.Liquid)} + {w.Text(power, Measure.Power)} x 1 h / (1000 kg/m³ x 4186 J/(kg K) x "
                + w.Text(basis.Rise, Measure.TemperatureDifference) + ")", StoreSource,
            [
                .. heaters.Select(h => FigureInput.Said(
                    "heater " + h.Id, string.Join(' ', h.Ratings.Select(r => QuantityText.Of(r, w.Units))), h.Span)),
                basis.ColdInput, basis.StoreInput]));

        double Rated(QuantityKind kind) => heaters.SelectMany(h => h.Ratings).Where(r => r.Unit?.Kind == kind).Sum(r => r.Base);
    }
}
