using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Shells;
using Floorplan.Model.Shells.Trailers;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Trailers;

/// <summary>What the axles of a trailer may carry on public roads, together.</summary>
internal static class RoadLimit
{
    private static readonly Source Us = new("23 CFR 658.17 and the bridge formula, FHWA, US CFR", Origin.FoundInPublicCopy, Force.Law);
    private static readonly Source Eu = new("Directive 96/53/EC Annex I 3.1 to 3.3, axle loads of trailers", Origin.FromMemory, Force.Law);
    private static readonly Source Apart = new("axles a wheel arch of 36 in (914 mm) apart", Origin.OwnAssumption);

    /// <summary>Null where the plan has no axles. <c>code none</c> has the European figures.</summary>
    public static Figure? Of(Plan plan, Workings work)
    {
        if (plan.Shell is not { Kind: ShellKind.Trailer, Axles: > 0 and var axles })
        {
            return null;
        }

        double spread = (axles - 1) * TrailerBuild.ArchPerAxle.Millimetres;
        bool us = plan.Head.Code == CodeChoice.Us;
        double kilograms = us
            ? BridgeFormula.Allowed(spread / InchPound.MillimetresPerInch, axles) * InchPound.KilogramsPerPound
            : European(spread, axles);
        string text = work.Text(kilograms, Measure.Mass);
        string spreadText = WorkingText.Long(spread, work.Units);
        return work.Of(
            "road limit of the axles", Figure.WholePlan, kilograms, Measure.Mass, "by number of axles and first to last axle",
            $"{axles} axles over {spreadText}: {text}", us ? Us : Eu,
            FigureInput.Said("axles", QuantityText.Plain(axles, 0), plan.Shell.Span),
            FigureInput.Taken("first to last axle", spreadText, Apart));
    }

    /// <summary>In kg: one axle, a tandem by its spacing, three or more as a triple.</summary>
    /// <param name="spread">From the first to the last axle, mm.</param>
    internal static double European(double spread, int axles) => axles switch
    {
        1 => 10_000,
        2 => spread switch { < 1000 => 11_000, < 1300 => 16_000, < 1800 => 18_000, _ => 20_000 },
        _ => spread / (axles - 1) <= 1300 ? 21_000 : 24_000,
    };
}
