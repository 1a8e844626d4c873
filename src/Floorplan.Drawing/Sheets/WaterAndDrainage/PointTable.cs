using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Symbols.Services;
using Floorplan.Drawing.Views;
using Floorplan.Language.Quantities;
using Floorplan.Model.Services;
using Floorplan.Sizing;

namespace Floorplan.Drawing.Sheets.WaterAndDrainage;

/// <summary>Every point with its place from the steel datum.</summary>
internal static class PointTable
{
    public static KeyTable Of(PlanFacts facts, IReadOnlyList<ServicePoint> points) => new(
        $"Points, from the {DatumWords.Of(facts.Plan.Shell.Kind)}",
        ["Mark", "What", "X", "Y", "Height", "Size"],
        [.. points.Select(p => Row(facts, p))]);

    private static IReadOnlyList<Cell> Row(PlanFacts facts, ServicePoint point)
    {
        var plan = facts.Plan;
        var at = point.At - plan.Shell.Datum;
        var tape = Tape.For(plan.Units);
        return
        [
            ServiceLayer.Mark(point),
            string.Join(", ", ((point as IGuardedPoint)?.GuardWords ?? []).Prepend(ServiceSymbols.NameOf(point))),
            tape.Cell(at.X),
            tape.Cell(at.Y),
            Height(tape, point),
            Size(facts, point),
        ];
    }

    private static string Height(Tape tape, ServicePoint point) => point switch
    {
        { Height: { } height } => tape.Cell(height),
        Drain { OutletBelow: { } below } => "outlet " + tape.Cell(-tape.Round(below)),
        Drain => "floor",
        _ => "",
    };

    private static Cell Size(PlanFacts facts, ServicePoint point) => point switch
    {
        Hose { Length: { } length } hose => Reach(facts, hose, length),
        Hole { Size: { } size } => Tape.ForSteel(facts.Plan.Units).Cell(size),
        ISizedPoint { Size: { } size } => QuantityText.Bought(size, facts.Plan.Units),
        RatedPoint rated => string.Join(", ", rated.Ratings.Select(r => QuantityText.Of(r, facts.Plan.Units))),
        _ => "",
    };

    /// <summary>A hose that does not reach all of its room although a straight line does; those that do stand in a note.</summary>
    private static Cell Reach(PlanFacts facts, Hose hose, Length length)
    {
        string words = QuantityText.Distance(length.Millimetres, facts.Plan.Units) + (hose.OnId is null ? "" : " on " + hose.OnId);
        return facts.HoseCover.FarthestOfRoom(hose) is not { } farthest ? words
            : farthest.Value <= length.Millimetres ? new Cell(words, [farthest])
            : new Cell($"{words}, farthest floor {farthest.Text} along the way", [farthest]);
    }
}
