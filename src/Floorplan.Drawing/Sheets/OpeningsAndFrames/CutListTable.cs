using System.Globalization;
using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Frames;
using Floorplan.Language.Quantities;
using Floorplan.Sizing.Frames;

namespace Floorplan.Drawing.Sheets.OpeningsAndFrames;

/// <summary>Every piece of every frame to saw, and what each section adds up to.</summary>
internal static class CutListTable
{
    public static KeyTable Of(CutList list, UnitSystem units) => new(
        "Frames to saw, lengths over long points",
        ["For", "Part", "No", "Length", "Ends", QuantityText.Unit(Measure.Mass, units)],
        [.. list.Totals.SelectMany(total => list.Rows.Where(r => r.Piece.Section == total.Section).Select(r => Row(r, units))
            .Prepend([total.Section.Name(units)])
            .Append([
                "", "all", Number(total.Pieces), Tape.ForSteel(units).Cell(total.Length), "",
                new Cell(QuantityText.Number(total.Kilograms.Value, Measure.Mass, units), [total.Kilograms])]))]);

    private static IReadOnlyList<Cell> Row(CutListRow row, UnitSystem units) =>
    [
        row.Opening,
        row.Piece.Part,
        Number(row.Count),
        Tape.ForSteel(units).Cell(row.Piece.Length),
        $"{Degrees(row.Piece.Top)}/{Degrees(row.Piece.Foot)}",
        QuantityText.Number(row.Piece.Kilograms * row.Count, Measure.Mass, units),
    ];

    private static string Degrees(EndCut end) => end == EndCut.Mitre ? "45°" : "90°";

    private static string Number(int count) => count.ToString(CultureInfo.InvariantCulture);
}
