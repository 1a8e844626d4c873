using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Shells;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Weights;

/// <summary>What a bare box or trailer weighs: as the plan says, or for a container what boxes of its kind usually weigh.</summary>
public static class BareShell
{
    /// <summary>Between boxes of 10, 20, 40 and 45 ft, outside length in mm.</summary>
    private const double Small = 4500;
    private const double LongBox = 9000;
    private const double LongestBox = 13_000;

    public static Source Trade { get; } = new(
        "container trade figures for empty boxes: 20 ft 2300 kg, 40 ft 3940 kg, 40 ft high-cube 4120 kg", Origin.FoundInPublicCopy);
    private static readonly Source Said = new("as the plan says", Origin.CommonPractice);

    /// <summary>Null where neither the plan nor the trade says it.</summary>
    internal static Figure? WeightOf(Plan plan) => plan.Shell.Loads.EmptyKg is { } said ? Make(plan, said, isSaid: true)
        : Usual(plan.Shell) is { } usual ? Make(plan, usual, isSaid: false) : null;

    private static double? Usual(Shell shell) => (shell.Kind, shell.Outside.EnvelopeInternal.Width) switch
    {
        (ShellKind.Container, > Small and < LongBox) => 2300,
        (ShellKind.Container, >= LongBox and < LongestBox) => shell.Name.Contains("high-cube", StringComparison.Ordinal) ? 4120 : 3940,
        _ => null,
    };

    private static Figure Make(Plan plan, double kilograms, bool isSaid)
    {
        string text = QuantityText.Of(kilograms, Measure.Mass, plan.Units);
        return new Figure
        {
            Name = "weight of the bare shell",
            Of = Figure.WholePlan,
            Value = kilograms,
            Kind = QuantityKind.Mass,
            Text = text,
            Inputs = [isSaid ? FigureInput.Said("weight empty", text, plan.Shell.Span) : FigureInput.Taken("weight empty", text, Trade)],
            Formula = isSaid ? "weight as said" : "weight of boxes of this kind",
            Substituted = text,
            Source = isSaid ? Said : Trade,
        };
    }
}
