using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model;
using Floorplan.Model.Shells;
using Floorplan.Sizing.Weights;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Trailers;

/// <summary>
/// How a trailer's weight is shared between hitch and axles: moments about the coupling. The bare trailer's weight is taken to lie in the
/// middle of the box (own assumption); linings, floor, partitions and frames lie where they are built.
/// </summary>
/// <param name="Name">What it carries: <c>full</c>.</param>
/// <param name="IsFull">Everything is full.</param>
/// <param name="ToWeight">From the coupling to the centre of all weight, in mm.</param>
/// <param name="HitchShare">Of all weight; 1 is the whole.</param>
public sealed record TrailerLoad(
    string Name, bool IsFull, Figure Total, Figure ToWeight, Figure OnAxles, Figure OnHitch, Figure HitchShare)
{
    private static readonly Source Statics = new(
        "moments about the coupling, Trailer-Body Builders: tongue weight calculator", Origin.FoundInPublicCopy);
    private static readonly Source Middle = new("the bare trailer's weight lies in the middle of its box", Origin.OwnAssumption);

    /// <summary>How far behind the coupling the axles would have to be for the hitch to carry this share, in mm.</summary>
    public double AxlesFor(double percent) => ToWeight.Value / (1 - (percent / 100));

    /// <summary>How far behind the coupling a place of the plan lies, in mm.</summary>
    internal static double FromCoupling(Plan plan, double x)
    {
        var (shell, box) = (plan.Shell, plan.Shell.Outside.EnvelopeInternal);
        double ahead = shell.Loads.HitchAhead.Millimetres;
        return shell.HitchEnd == Side.West ? x - (box.MinX - ahead) : box.MaxX + ahead - x;
    }

    /// <summary>Of a weight on the hitch, from 0 to 1; less than zero where the hitch is lifted.</summary>
    internal static double ShareOf(Plan plan, double kilograms, Moment moment)
        => 1 - (FromCoupling(plan, moment.East / kilograms) / plan.Shell.Loads.AxlesFromHitch!.Value.Millimetres);

    /// <summary>Null where the plan does not say enough: the trailer's own weight, its axles, and a thing's weight.</summary>
    internal static TrailerLoad? Of(PlanFacts facts, LoadState state)
    {
        var (plan, shell, units) = (facts.Plan, facts.Plan.Shell, facts.Plan.Units);
        if (shell.Kind != ShellKind.Trailer || facts.Items.Weighed.Count == 0
            || shell.Loads is not { EmptyKg: not null, AxlesFromHitch: { } axles } loads
            || state.Total is not { Value: > 0 } total)
        {
            return null;
        }

        double toWeight = FromCoupling(plan, state.Moment.East / total.Value);
        var ahead = FigureInput.Said("coupling to box", QuantityText.Length(loads.HitchAhead, units), shell.Span);
        var toAxles = FigureInput.Said("coupling to axles", QuantityText.Length(axles, units), shell.Span);
        var centre = Make(
            "distance from coupling to weight", toWeight, QuantityKind.Length, WorkingText.Long(toWeight, units),
            [
                .. state.Parts.Select(p => FigureInput.Of(p.Weight)), ahead,
                FigureInput.Taken("place of the bare trailer's weight", "middle of the box", Middle)],
            "sum of each weight x its distance from the coupling / weight together",
            $"({WorkingText.Sum([.. state.Parts.Select(Term)])}) / {total.Text}");
        double onAxles = total.Value * toWeight / axles.Millimetres;
        var axleLoad = Make(
            "weight on the axles", onAxles, QuantityKind.Mass, QuantityText.Of(onAxles, Measure.Mass, units),
            [FigureInput.Of(total), FigureInput.Of(centre), toAxles],
            "weight together x distance from coupling to weight / coupling to axles",
            $"{total.Text} x {centre.Text} / {WorkingText.Long(axles.Millimetres, units)}");
        var hitch = Make(
            "weight on the hitch", total.Value - onAxles, QuantityKind.Mass, QuantityText.Of(total.Value - onAxles, Measure.Mass, units),
            [FigureInput.Of(total), FigureInput.Of(axleLoad)],
            "weight together - weight on the axles", $"{total.Text} - {axleLoad.Text}");
        double share = hitch.Value / total.Value;
        var hitchShare = Make(
            "share of the weight on the hitch", share, QuantityKind.Ratio, QuantityText.Of(share, Measure.Ratio, units),
            [FigureInput.Of(hitch), FigureInput.Of(total)],
            "weight on the hitch / weight together", $"{hitch.Text} / {total.Text}");
        return new TrailerLoad(state.Name, state.IsFull, total, centre, axleLoad, hitch, hitchShare);

        string Term((Figure Weight, Moment Moment) part) =>
            $"{part.Weight.Text} x {WorkingText.Long(FromCoupling(plan, part.Moment.East / part.Weight.Value), units)}";

        Figure Make(
            string name, double value, QuantityKind kind, string text, IReadOnlyList<FigureInput> inputs, string formula,
            string substituted) => new()
            {
                Name = $"{name}, {state.Name}",
                Of = Figure.WholePlan,
                Value = value,
                Kind = kind,
                Text = text,
                Inputs = inputs,
                Formula = formula,
                Substituted = substituted,
                Source = Statics,
            };
    }
}
