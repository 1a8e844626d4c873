using Floorplan.Language.Quantities;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Weights.Crane;

/// <summary>Where the weight of a unit lies on plan, from the middle of its outside. Null without any weight.</summary>
/// <param name="East">Of the middle, in mm; less than zero is west.</param>
/// <param name="North">Of the middle, in mm; less than zero is south.</param>
public sealed record CentreOfWeight(Figure East, Figure North)
{
    private static readonly Source Statics = new("centre of gravity: sum of moments over sum of weights", Origin.CommonPractice);

    /// <summary><c>120 mm east and 30 mm south of the middle</c></summary>
    public string Text => $"{East.Text}, {North.Text} of the middle";

    internal static CentreOfWeight? Of(PlanFacts facts, bool full)
    {
        var work = new Workings(facts.Plan.Units);
        var total = facts.Weight.Of(full);
        if (total.Value <= 0)
        {
            return null;
        }

        var middle = facts.Plan.Shell.Outside.EnvelopeInternal.Centre;
        var moment = facts.Weight.Moment(full);
        List<WeightPart> parts = [.. facts.Weight.Parts.Where(p => p.Of(full).Value > 0)];
        string state = full ? "full" : "empty";
        return new CentreOfWeight(
            Make("east", "west", (moment.East / total.Value) - middle.X, p => (p.Moment(full).East / p.Of(full).Value) - middle.X),
            Make("north", "south", (moment.North / total.Value) - middle.Y, p => (p.Moment(full).North / p.Of(full).Value) - middle.Y));

        Figure Make(string way, string back, double off, Func<WeightPart, double> of) => work.Of(
            $"centre of weight {way} of the middle, {state}", Figure.WholePlan, off, QuantityKind.Length,
            $"{QuantityText.SizeOrDistance(Math.Abs(Math.Round(off)), work.Units)} {(off >= 0 ? way : back)}",
            $"sum of each weight x its distance {way} of the middle / weight together",
            $"({WorkingText.Sum([.. parts.Select(p => $"{p.Of(full).Text} x {WorkingText.Long(of(p), work.Units)}")])}) / {total.Text}",
            Statics, [.. parts.Select(p => FigureInput.Of(p.Of(full))), FigureInput.Of(total)]);
    }
}
