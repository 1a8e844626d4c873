using Floorplan.Language.Quantities;
using Floorplan.Sizing.Frames;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Weights;

/// <summary>The steel frames of openings, as the cut list has them. The sheet that is cut out is not taken off.</summary>
internal static class FrameWeight
{
    /// <summary>Null where there are no frames.</summary>
    public static WeightPart? Of(PlanFacts facts)
    {
        var list = facts.CutList;
        double kilograms = list.Totals.Sum(t => t.Kilograms.Value);
        if (kilograms <= 0)
        {
            return null;
        }

        var weight = new Figure
        {
            Name = "weight of frames",
            Of = Figure.WholePlan,
            Value = kilograms,
            Kind = QuantityKind.Mass,
            Text = QuantityText.Of(kilograms, Measure.Mass, facts.Plan.Units),
            Inputs = [.. list.Totals.Select(t => FigureInput.Of(t.Kilograms))],
            Formula = "sum of the sections of the cut list",
            Substituted = WorkingText.Sum([.. list.Totals.Select(t => t.Kilograms.Text)]),
            Source = CutList.Sums,
        };
        var moment = Moment.Sum(facts.CutOuts.Where(c => c.Frame is not null).Select(MomentOf));
        double share = facts.CutOuts.Sum(KilogramsOf);
        return WeightPart.Same("frames of openings", weight, moment.East / share, moment.North / share);
    }

    private static double KilogramsOf(CutOut cut) => cut.Frame?.Pieces.Sum(p => p.Kilograms) ?? 0;

    private static Moment MomentOf(CutOut cut)
    {
        double along = (cut.Along + (cut.Width / 2) + cut.Wall.From).Millimetres;
        double across = cut.Wall.At.Millimetres;
        return cut.Wall.RunsEastWest ? Moment.Of(KilogramsOf(cut), along, across) : Moment.Of(KilogramsOf(cut), across, along);
    }
}
