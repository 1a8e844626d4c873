using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Views;
using Floorplan.Language.Quantities;
using Floorplan.Model.Services;
using Floorplan.Model.Shells;
using Floorplan.Sizing.Frames;

namespace Floorplan.Drawing.Sheets.OpeningsAndFrames;

/// <summary>The holes in figures: in the steel from the datum, and clear from the finished inside.</summary>
internal static class CutOutTables
{
    public static KeyTable Steel(Shell shell, IReadOnlyList<CutOut> cuts, UnitSystem units) => new(
        shell.Kind == ShellKind.Shed ? "Holes in the walls, from the datum" : "Holes in the steel, from the datum",
        ["Mark", "Along", "Up", "Wide × high", "Radius"],
        [.. Grouped(shell, cuts, c =>
        [
            OpeningLayer.Mark(c.Opening),
            CellText.Of(c.Along, units),
            CellText.Of(c.Bottom, units),
            $"{CellText.Of(c.Width, units)}×{CellText.Of(c.Height, units)}",
            CellText.Of(c.Radius, units),
        ])]);

    public static KeyTable Clear(Shell shell, IReadOnlyList<CutOut> cuts, UnitSystem units) => new(
        "Clear openings, from the finished inside",
        ["Mark", "Along", "Sill", "Wide × high"],
        [.. Grouped(shell, cuts, c =>
        [
            OpeningLayer.Mark(c.Opening),
            CellText.Of(c.Wall.RunsEastWest ? c.Opening.Start.X : c.Opening.Start.Y, units),
            CellText.Of(c.Opening.Sill, units),
            $"{CellText.Of(c.Opening.Width, units)}×{CellText.Of(c.Opening.Height, units)}",
        ])]);

    public static KeyTable Services(Shell shell, IReadOnlyList<ServiceHole> holes, UnitSystem units) => new(
        "Pipe, cable and fan holes, to middles",
        ["Mark", "For", "Along", "Up", "Size"],
        [.. holes.GroupBy(h => (h.Surface, h.Wall)).SelectMany(group => group.Select(h => (IReadOnlyList<Cell>)
        [
            ServiceLayer.Mark(h.Point),
            h.Point.Kind == ServiceKind.Drain ? "drain" : h.Point.Label,
            CellText.Of(h.X, units),
            CellText.Of(h.Y, units),
            Size(h, units),
        ]).Prepend([group.Key.Wall is { } wall ? $"{wall.NameIn(shell)}, from the {(wall.RunsEastWest ? "west" : "south")}" : $"{group.Key.Surface.ToString().ToLowerInvariant()}, along from the west, up from the south"]))]);

    private static string Size(ServiceHole hole, UnitSystem units) => hole switch
    {
        { Width: null } => "not said",
        { Depth: { } depth } => $"{CellText.Of(hole.Width.Value, units)}×{CellText.Of(depth, units)}",
        _ => $"Ø{CellText.Of(hole.Width.Value, units)}",
    };

    private static IEnumerable<IReadOnlyList<Cell>> Grouped(Shell shell, IReadOnlyList<CutOut> cuts, Func<CutOut, IReadOnlyList<Cell>> row) =>
        cuts.GroupBy(c => c.Wall).SelectMany(wall => wall.Select(row).Prepend([$"{wall.Key.NameIn(shell)}, from the {(wall.Key.RunsEastWest ? "west" : "south")}"]));
}
