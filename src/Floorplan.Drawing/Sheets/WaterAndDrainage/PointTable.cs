using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Views;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Services;

namespace Floorplan.Drawing.Sheets.WaterAndDrainage;

/// <summary>Every point with its place from the steel datum.</summary>
internal static class PointTable
{
    public static KeyTable Of(Plan plan, IReadOnlyList<ServicePoint> points) => new(
        "Points, from the steel datum",
        ["Mark", "What", "X", "Y", "Height", "Size"],
        [.. points.Select(p => Row(plan, p))]);

    private static IReadOnlyList<Cell> Row(Plan plan, ServicePoint point)
    {
        var at = point.At - plan.Shell.Datum;
        return
        [
            ServiceLayer.Mark(point),
            string.Join(", ", point.BackflowGuards.Prepend(ServiceSymbols.NameOf(point))),
            QuantityText.Cell(at.X, plan.Units),
            QuantityText.Cell(at.Y, plan.Units),
            Height(plan, point),
            Size(plan, point),
        ];
    }

    private static string Height(Plan plan, ServicePoint point) => point switch
    {
        { Height: { } height } => QuantityText.Cell(height, plan.Units),
        { Kind: ServiceKind.Drain, OutletBelow: { } below } => "outlet " + QuantityText.Cell(-below, plan.Units),
        { Kind: ServiceKind.Drain } => "floor",
        _ => "",
    };

    private static string Size(Plan plan, ServicePoint point) => point switch
    {
        { HoseLength: { } length } => QuantityText.Distance(length.Millimetres, plan.Units) + (point.OnId is null ? "" : " on " + point.OnId),
        { Size: { } size } => QuantityText.Cell(size, plan.Units),
        _ => string.Join(", ", point.Ratings.Select(r => QuantityText.Of(r, plan.Units))),
    };
}
