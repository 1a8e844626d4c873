using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Sheets.GeneralArrangement;
using Floorplan.Drawing.Views;
using Floorplan.Drawing.Views.Openings;
using Floorplan.Language.Quantities;
using Floorplan.Model.Services;
using Floorplan.Model.Shells;
using Floorplan.Sizing.Frames;

namespace Floorplan.Drawing.Sheets.OpeningsAndFrames;

/// <summary>The holes in figures: in the steel from the datum, and clear from the finished inside.</summary>
internal static class CutOutTables
{
    /// <summary>A shell with more walls than this has one that begins away from the corner of the shell.</summary>
    private const int Four = 4;

    public static KeyTable Steel(Shell shell, IReadOnlyList<CutOut> cuts, UnitSystem units) => new(
        shell.Kind == ShellKind.Shed
            ? ShellWall.Of(shell).Count > Four ? "Holes, each wall from its own end" : "Holes in the walls, from the datum"
            : "Holes in the steel, from the datum",
        ["Mark", "Along", "Up", "Wide × high", "Radius"],
        [.. Grouped(shell, cuts, c =>
        [
            OpeningLayer.Mark(c.Opening),
            QuantityText.Cell(c.Along, units),
            QuantityText.Cell(c.Bottom, units),
            $"{QuantityText.Cell(c.Width, units)}×{QuantityText.Cell(c.Height, units)}",
            QuantityText.Cell(c.Radius, units),
        ])]);

    public static KeyTable Clear(Shell shell, IReadOnlyList<CutOut> cuts, UnitSystem units) => new(
        "Clear openings, from the finished inside",
        ["Mark", "Along", "In its room", "Sill", "Wide × high"],
        [.. Grouped(shell, cuts, c =>
        [
            OpeningLayer.Mark(c.Opening),
            QuantityText.Cell((c.Wall.RunsEastWest ? c.Opening.Start.X : c.Opening.Start.Y) - c.Wall.FinishedIn(shell).From, units),
            OpeningKeyTable.PlaceInRoom(c.Opening, units),
            QuantityText.Cell(c.Opening.Sill, units),
            $"{QuantityText.Cell(c.Opening.Width, units)}×{QuantityText.Cell(c.Opening.Height, units)}",
        ])]);

    public static KeyTable Services(Shell shell, IReadOnlyList<ServiceHole> holes, UnitSystem units) => new(
        "Pipe, cable and fan holes, to middles",
        ["Mark", "For", "Along", "Up", "Size"],
        [.. holes.GroupBy(h => (h.Surface, h.Wall)).SelectMany(group => group.Select(h => (IReadOnlyList<Cell>)
        [
            ServiceLayer.Mark(h.Point),
            h.Point is Drain ? "drain" : h.Point.Label,
            QuantityText.Cell(h.X, units),
            QuantityText.Cell(h.Y, units),
            Size(h, units),
        ]).Prepend(
            [group.Key.Wall is { } wall
                ? $"{wall.NameIn(shell)}, from the {(wall.RunsEastWest ? "west" : "south")}"
                : $"{group.Key.Surface.ToString().ToLowerInvariant()}, along from the west, up from the south"]))]);

    private static string Size(ServiceHole hole, UnitSystem units) => hole switch
    {
        { Width: null } => "not said",
        { Depth: { } depth } => $"{QuantityText.Cell(hole.Width.Value, units)}×{QuantityText.Cell(depth, units)}",
        _ => $"Ø{QuantityText.Cell(hole.Width.Value, units)}",
    };

    private static IEnumerable<IReadOnlyList<Cell>> Grouped(
        Shell shell, IReadOnlyList<CutOut> cuts, Func<CutOut, IReadOnlyList<Cell>> row) =>
        cuts.GroupBy(c => c.Wall)
            .SelectMany(wall => wall.Select(row)
                .Prepend([$"{wall.Key.NameIn(shell)}, from the {(wall.Key.RunsEastWest ? "west" : "south")}"]));
}
