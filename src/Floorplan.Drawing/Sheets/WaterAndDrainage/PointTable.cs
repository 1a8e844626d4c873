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
        return
        [
            ServiceLayer.Mark(point),
            string.Join(", ", ((point as IGuardedPoint)?.GuardWords ?? []).Prepend(ServiceSymbols.NameOf(point))),
            QuantityText.Cell(at.X, plan.Units),
            QuantityText.Cell(at.Y, plan.Units),
            Height(plan, point),
            Size(plan, point),
        ];
    }

    private static string Height(Plan plan, ServicePoint point) => point switch
    {
        { Height: { } height } => QuantityText.Cell(height, plan.Units),
        Drain { OutletBelow: { } below } => "outlet " + QuantityText.Cell(-below, plan.Units),
        Drain => "floor",
        _ => "",
    };

    private static string Size(Plan plan, ServicePoint point) => point switch
    {
        Hose { Length: { } length } hose
            => QuantityText.Distance(length.Millimetres, plan.Units) + (hose.OnId is null ? "" : " on " + hose.OnId),
        ISizedPoint { Size: { } size } => QuantityText.Cell(size, plan.Units),
        RatedPoint rated => string.Join(", ", rated.Ratings.Select(r => QuantityText.Of(r, plan.Units))),
        _ => "",
    };
}
