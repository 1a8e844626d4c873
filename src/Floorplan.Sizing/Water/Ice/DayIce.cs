using Floorplan.Language.Quantities;
using Floorplan.Language.Quantities.Heat;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Simulation.Plans;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Water.Ice;

/// <summary>Ice of a day that cools the product; what melts by the warm room comes on top.</summary>
internal static class DayIce
{
    private const double Cooled = 4;
    private const double BodyHeat = 38;
    private const double Landed = 15;


    private static readonly string[] Birds = ["bird", "chicken", "duck", "turkey", "goose", "geese", "quail", "hen", "poult", "pheasant"];
    private static readonly string[] Fish = ["fish", "trout", "salmon", "cod", "char", "carp", "perch"];

    private static readonly Source Own = new(
        "own assumption: birds come at 38 °C and leave at 4 °C, fish at 15 °C and 0 °C, other food at 38 °C and 4 °C",
            Origin.OwnAssumption);

    private static readonly Source Heat = new(
        "specific heat: poultry 3.31 (Geankoplis A.4), fish 3.35 (FAO), other food 3.5 kJ/(kg K), own assumption",
        Origin.FoundInPublicCopy);

    /// <summary>kg; null where nothing needs ice, or the plan does not say how much product there is.</summary>
    internal static Figure? Of(PlanFacts facts, Workings w)
    {
        var uses = facts.Uses.Of(NeedKind.Ice).ToList();
        if (uses.Count == 0 || facts.Day.Planned.Products is not { Count: > 0 } products)
        {
            return null;
        }

        var terms = new List<string>();
        double ice = 0;
        foreach (var product in products)
        {
            if (PlannedLine.ItemKilograms(facts.Plan, product.Product) is not { } each)
            {
                return null;
            }

            int items = product.Line.Supply.Items;
            var (heat, from, to) = Fish.Any(f => product.Unit.Contains(f, StringComparison.OrdinalIgnoreCase))
                ? (IceNeed.LeanFish, Landed, 0)
                : (Birds.Any(b => product.Unit.Contains(b, StringComparison.OrdinalIgnoreCase)) ? IceNeed.Poultry : 3500.0, BodyHeat,
                    Cooled);
            ice += IceNeed.Of(items * each, heat, from - to);
            terms.Add(
                $"{items} {product.Unit} x {w.Text(each, Measure.Mass)} x {HeatText.SpecificHeat(heat / 1000, w.Units)} x "
                    + $"{w.Text(from - to, Measure.TemperatureDifference)} / {HeatText.PerWeight(IceNeed.Melting / 1000, w.Units)}");
        }

        return w.Of(
            "ice that cools the product of a day", Figure.WholePlan, ice, Measure.Mass,
            "product x specific heat x fall of temperature / heat that melts ice", WorkingText.Sum(terms), IceNeed.Source,
            [
                .. uses.Select(u => FigureInput.Said("ice at " + u.ById, "needed", u.Span)),
                FigureInput.Taken("temperatures", "in and out", Own), FigureInput.Taken("specific heat", "by product", Heat)]);
    }
}
