using Floorplan.Language.Quantities;
using Floorplan.Model.Shells;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Weights;

/// <summary>
/// What a unit weighs, part by part, with everything empty and with everything full. People are not counted: nobody rides in it.
/// </summary>
/// <param name="Parts">Bare shell, layers, frames, water of heaters, things; only those that there are.</param>
/// <param name="BuiltIn">Layers and frames together; null without any.</param>
/// <param name="IsWhole">The weight of the bare shell is known and counted.</param>
public sealed record UnitWeight(IReadOnlyList<WeightPart> Parts, Figure? BuiltIn, Figure Empty, Figure Full, bool IsWhole)
{
    private static readonly Source Sum = new("sum of the parts", Origin.CommonPractice);

    public Figure Of(bool full) => full ? Full : Empty;

    /// <summary>Of all weight about the plan's origin.</summary>
    public Moment Moment(bool full) => Weights.Moment.Sum(Parts.Select(p => p.Moment(full)));

    internal static UnitWeight Of(PlanFacts facts)
    {
        var (plan, units) = (facts.Plan, facts.Plan.Units);
        var parts = new List<WeightPart>();
        var bare = BareShell.WeightOf(plan);
        if (bare is not null)
        {
            var middle = plan.Shell.Outside.EnvelopeInternal.Centre;
            parts.Add(WeightPart.Same("bare shell", bare, middle.X, middle.Y));
        }

        List<WeightPart> builtIn = [.. facts.Layers.Select(l => WeightPart.Same($"{l.Name}: {l.Made}", l.Weight, l.CentreX, l.CentreY))];
        if (plan.Shell.Kind != ShellKind.Shed && FrameWeight.Of(facts) is { } frames)
        {
            builtIn.Add(frames);
        }

        parts.AddRange(builtIn);
        if (plan.Shell.Kind != ShellKind.Shed && HeaterWater.Of(plan) is { } water)
        {
            parts.Add(water);
        }

        if (facts.Items.Weighed.Count > 0)
        {
            parts.Add(WeightPart.OfThings(facts.Items));
        }

        return new UnitWeight(
            parts,
            builtIn.Count == 0 ? null : Together("weight of what is built in", builtIn, p => p.Full),
            Together("weight together, empty", parts, p => p.Empty),
            Together("weight together, full", parts, p => p.Full),
            bare is not null);

        Figure Together(string name, IReadOnlyList<WeightPart> of, Func<WeightPart, Figure> weight)
        {
            double kilograms = of.Sum(p => weight(p).Value);
            return new Figure
            {
                Name = name,
                Of = Figure.WholePlan,
                Value = kilograms,
                Kind = QuantityKind.Mass,
                Text = QuantityText.Of(kilograms, Measure.Mass, units),
                Inputs = [.. of.Select(p => FigureInput.Of(weight(p)))],
                Formula = "sum of the parts",
                Substituted = of.Count == 0 ? "none" : WorkingText.Sum([.. of.Select(p => weight(p).Text)]),
                Source = Sum,
            };
        }
    }
}
