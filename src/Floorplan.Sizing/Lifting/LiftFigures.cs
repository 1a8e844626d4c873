using System.Globalization;
using Floorplan.Language.Quantities;
using Floorplan.Model.Flows;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Lifting;

/// <summary>The worked-out values of lifts. The same lift asked for by several flows has the same values.</summary>
internal sealed class LiftFigures(UnitSystem units)
{
    private static readonly Source Equation = new(
        "Revised NIOSH lifting equation, DHHS (NIOSH) 94-110, 1994, rev. 2021", Origin.FoundInPublicCopy);
    private static readonly Source Favourable = new("load close, no twist, firm grip, a lift now and then", Origin.OwnAssumption);
    private static readonly Source Lightest = new("of several products the lightest", Origin.OwnAssumption);
    private readonly Dictionary<(string From, string To, double Kilograms), Figure> loads = [];
    private readonly Dictionary<(Figure Load, double Origin, double End), Figure> indices = [];

    /// <param name="input">Where the load comes from.</param>
    public Figure Load(Stop? from, Stop? to, double kilograms, FigureInput input)
    {
        var key = (from?.Name ?? "outside", to?.Name ?? "outside", kilograms);
        if (!loads.TryGetValue(key, out var known))
        {
            string text = QuantityText.Of(kilograms, Measure.Mass, units);
            loads[key] = known = new Figure
            {
                Name = $"load lifted from {key.Item1} to {key.Item2}, {text}",
                Of = Figure.WholePlan,
                Value = kilograms,
                Kind = QuantityKind.Mass,
                Text = text,
                Inputs = [input],
                Formula = "load as said, or what is lifted there",
                Substituted = text,
                Source = Lightest,
            };
        }

        return known;
    }

    /// <summary>The index at the harder end of the lift; heights of the hands in mm.</summary>
    public Figure Index(Figure load, double originMm, double endMm)
    {
        if (!indices.TryGetValue((load, originMm, endMm), out var known))
        {
            double pounds = load.Value / InchPound.KilogramsPerPound;
            var worst = new[] { At(pounds, originMm, endMm, originMm), At(pounds, originMm, endMm, endMm) }.MaxBy(LiftingEquation.Index)!;
            double index = LiftingEquation.Index(worst);
            indices[(load, originMm, endMm)] = known = new Figure
            {
                Name = load.Name.Replace("load lifted", "lifting index", StringComparison.Ordinal)
                    + $", hands from {QuantityText.Length(Length.FromMillimetres(originMm), units)}"
                    + $" to {QuantityText.Length(Length.FromMillimetres(endMm), units)}",
                Of = Figure.WholePlan,
                Value = index,
                Kind = QuantityKind.Count,
                Text = double.IsFinite(index) ? index.ToString("0.00", CultureInfo.InvariantCulture) : "beyond the equation",
                Inputs =
                [
                    FigureInput.Of(load),
                    FigureInput.Taken("hands at the start", QuantityText.Length(Length.FromMillimetres(originMm), units), Favourable),
                    FigureInput.Taken("hands at the end", QuantityText.Length(Length.FromMillimetres(endMm), units), Favourable),
                ],
                Formula = "load / (load constant x multipliers for reach, height, travel, twist, how often, grip)",
                Substituted = $"{QuantityText.Plain(pounds, 1)} lb / ({LiftingEquation.Working(worst)})",
                Source = Equation,
            };
        }

        return known;
    }

    private static Lift At(double pounds, double originMm, double endMm, double heightMm)
    {
        double origin = originMm / InchPound.MillimetresPerInch;
        return new Lift(
            pounds, 10, heightMm / InchPound.MillimetresPerInch, Math.Abs((endMm / InchPound.MillimetresPerInch) - origin), 0, 0.2,
            LiftingDuration.Short, Coupling.Good)
        {
            OriginIn = origin,
        };
    }
}
