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

    public static KeyTable Steel(Shell shell, IReadOnlyList<CutOut> cuts, Tape tape) => new(
        shell.Kind == ShellKind.Shed
            ? ShellWall.Of(shell).Count > Four ? "Holes, each wall from its own end" : "Holes in the walls, from the datum"
            : "Holes in the steel, from the datum",
        ["Mark", "Along", "Up", "Wide × high", "Radius"],
        [.. Grouped(shell, cuts, c =>
        [
            OpeningLayer.Mark(c.Opening),
            tape.Cell(c.Along),
            tape.Cell(c.Bottom),
            $"{tape.Cell(c.Width)}×{tape.Cell(c.Height)}",
            tape.Cell(c.Radius),
        ])]);

    public static KeyTable Clear(Shell shell, IReadOnlyList<CutOut> cuts, Tape tape) => new(
        "Clear openings, from the finished inside",
        ["Mark", "Along", "In its room", "Sill", "Wide × high"],
        [.. Grouped(shell, cuts, c =>
        [
            OpeningLayer.Mark(c.Opening),
            tape.Cell((c.Wall.RunsEastWest ? c.Opening.Start.X : c.Opening.Start.Y) - c.Wall.FinishedIn(shell).From),
            OpeningKeyTable.PlaceInRoom(c.Opening, tape),
            tape.Cell(c.Opening.Sill),
            $"{tape.Cell(c.Opening.Width)}×{tape.Cell(c.Opening.Height)}",
        ])]);

    public static KeyTable Services(Shell shell, IReadOnlyList<ServiceHole> holes, Tape tape) => new(
        "Pipe, cable and fan holes, to middles",
        ["Mark", "For", "Along", "Up", "Size"],
        [.. holes.GroupBy(h => (h.Surface, h.Wall)).SelectMany(group => group.Select(h => (IReadOnlyList<Cell>)
        [
            ServiceLayer.Mark(h.Point),
            h.Point is Drain ? "drain" : h.Point.Label,
            tape.Cell(h.X),
            tape.Cell(h.Y),
            Size(h, tape),
        ]).Prepend(
            [group.Key.Wall is { } wall
                ? $"{wall.NameIn(shell)}, from the {(wall.RunsEastWest ? "west" : "south")}"
                : $"{group.Key.Surface.ToString().ToLowerInvariant()}, along from the west, up from the south"]))]);

    private static string Size(ServiceHole hole, Tape tape) => hole switch
    {
        { Width: null } => "not said",
        { Depth: { } depth } => $"{tape.Cell(hole.Width.Value)}×{tape.Cell(depth)}",
        _ => $"Ø{tape.Cell(hole.Width.Value)}",
    };

    private static IEnumerable<IReadOnlyList<Cell>> Grouped(
        Shell shell, IReadOnlyList<CutOut> cuts, Func<CutOut, IReadOnlyList<Cell>> row) =>
        cuts.GroupBy(c => c.Wall)
            .SelectMany(wall => wall.Select(row)
                .Prepend([$"{wall.Key.NameIn(shell)}, from the {(wall.Key.RunsEastWest ? "west" : "south")}"]));
}
