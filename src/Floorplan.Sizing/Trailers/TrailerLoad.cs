using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model.Shells;
using Floorplan.Sizing.Weights;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Trailers;

/// <summary>
/// How a trailer's weight is shared between hitch and axles: moments about the coupling. The bare trailer's weight is taken to lie in the
/// middle of the box (own assumption); linings, floor, partitions and frames lie where they are built.
/// </summary>
/// <param name="ToWeight">From the coupling to the centre of all weight, in mm.</param>
/// <param name="HitchShare">Of all weight; 1 is the whole.</param>
public sealed record TrailerLoad(bool IsFull, Figure Total, Figure ToWeight, Figure OnAxles, Figure OnHitch, Figure HitchShare)
{
    private static readonly Source Statics = new(
        "moments about the coupling, Trailer-Body Builders: tongue weight calculator", Origin.FoundInPublicCopy);
    private static readonly Source Middle = new("the bare trailer's weight lies in the middle of its box", Origin.OwnAssumption);

    /// <summary>How far behind the coupling the axles would have to be for the hitch to carry this share, in mm.</summary>
    public double AxlesFor(double percent) => ToWeight.Value / (1 - (percent / 100));

    /// <summary>Null where the plan does not say enough: the trailer's own weight, its axles, and a thing's weight.</summary>
    internal static TrailerLoad? Of(PlanFacts facts, bool full)
    {
        var shell = facts.Plan.Shell;
        if (shell.Kind != ShellKind.Trailer || facts.Items.Weighed.Count == 0
            || shell.Loads is not { EmptyKg: not null, AxlesFromHitch: { } axles } loads)
        {
            return null;
        }

        var units = facts.Plan.Units;
        var box = shell.Outside.EnvelopeInternal;
        bool west = shell.HitchEnd == Side.West;
        double coupling = west ? box.MinX - loads.HitchAhead.Millimetres : box.MaxX + loads.HitchAhead.Millimetres;
        var weight = facts.Weight;
        var total = weight.Of(full);
        double moment = weight.Moment(full) - (coupling * total.Value);
        double toWeight = (west ? moment : -moment) / total.Value;
        string state = full ? "full" : "empty";
        var ahead = FigureInput.Said("coupling to box", QuantityText.Length(loads.HitchAhead, units), shell.Span);
        var toAxles = FigureInput.Said("coupling to axles", QuantityText.Length(axles, units), shell.Span);
        var centre = Make(
            "distance from coupling to weight", toWeight, QuantityKind.Length, WorkingText.Long(toWeight, units),
            [
                .. weight.Parts.Select(p => FigureInput.Of(p.Of(full))), ahead,
                FigureInput.Taken("place of the bare trailer's weight", "middle of the box", Middle)],
            "sum of each weight x its distance from the coupling / weight together",
            $"({WorkingText.Sum([.. weight.Parts.Where(p => p.Of(full).Value > 0).Select(Term)])}) / {total.Text}");
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
        return new TrailerLoad(full, total, centre, axleLoad, hitch, hitchShare);

        string Term(WeightPart part)
        {
            double at = (part.Moment(full) / part.Of(full).Value) - coupling;
            return $"{part.Of(full).Text} x {WorkingText.Long(west ? at : -at, units)}";
        }

        Figure Make(
            string name, double value, QuantityKind kind, string text, IReadOnlyList<FigureInput> inputs, string formula,
            string substituted) => new()
            {
                Name = $"{name}, {state}",
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
