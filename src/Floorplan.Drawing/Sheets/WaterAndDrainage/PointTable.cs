using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Symbols.Services;
using Floorplan.Drawing.Views;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Services;

namespace Floorplan.Drawing.Sheets.WaterAndDrainage;

/// <summary>Every point with its place from the steel datum.</summary>
internal static class PointTable
{
    public static KeyTable Of(Plan plan, IReadOnlyList<ServicePoint> points) => new(
        $"Points, from the {DatumWords.Of(plan.Shell.Kind)}",
        ["Mark", "What", "X", "Y", "Height", "Size"],
        [.. points.Select(p => Row(plan, p))]);

    private static IReadOnlyList<Cell> Row(Plan plan, ServicePoint point)
    {
        var at = point.At - plan.Shell.Datum;
        var tape = Tape.For(plan.Units);
        return
        [
            ServiceLayer.Mark(point),
            string.Join(", ", ((point as IGuardedPoint)?.GuardWords ?? []).Prepend(ServiceSymbols.NameOf(point))),
            tape.Cell(at.X),
            tape.Cell(at.Y),
            Height(tape, point),
            Size(plan, point),
        ];
    }

    private static string Height(Tape tape, ServicePoint point) => point switch
    {
        { Height: { } height } => tape.Cell(height),
        Drain { OutletBelow: { } below } => "outlet " + tape.Cell(-tape.Round(below)),
        Drain => "floor",
        _ => "",
    };

    private static string Size(Plan plan, ServicePoint point) => point switch
    {
        Hose { Length: { } length } hose
            => QuantityText.Distance(length.Millimetres, plan.Units) + (hose.OnId is null ? "" : " on " + hose.OnId),
        Hole { Size: { } size } => Tape.ForSteel(plan.Units).Cell(size),
        ISizedPoint { Size: { } size } => QuantityText.Bought(size, plan.Units),
        RatedPoint rated => string.Join(", ", rated.Ratings.Select(r => QuantityText.Of(r, plan.Units))),
        _ => "",
    };
}
