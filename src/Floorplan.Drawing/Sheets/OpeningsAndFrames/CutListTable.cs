using System.Globalization;
using Floorplan.Drawing.Frames;
using Floorplan.Language.Quantities;
using Floorplan.Sizing.Frames;

namespace Floorplan.Drawing.Sheets.OpeningsAndFrames;

/// <summary>Every piece of every frame to saw, and what each section adds up to.</summary>
internal static class CutListTable
{
    public static KeyTable Of(CutList list, UnitSystem units) => new(
        "Frames to saw, lengths over long points",
        ["For", "Part", "No", "Length", "Ends", Weight(units)],
        [.. list.Totals.SelectMany(total => list.Rows.Where(r => r.Piece.Section == total.Section).Select(r => Row(r, units))
            .Prepend([total.Section.Name(units)])
            .Append(["", "all", Number(total.Pieces), CellText.Of(total.Length, units), "", new Cell(Mass(total.Kilograms.Value, units), [total.Kilograms])]))]);

    private static IReadOnlyList<Cell> Row(CutListRow row, UnitSystem units) =>
    [
        row.Opening,
        row.Piece.Part,
        Number(row.Count),
        CellText.Of(row.Piece.Length, units),
        $"{Degrees(row.Piece.Top)}/{Degrees(row.Piece.Foot)}",
        Mass(row.Piece.Kilograms * row.Count, units),
    ];

    private static string Degrees(EndCut end) => end == EndCut.Mitre ? "45°" : "90°";

    private static string Number(int count) => count.ToString(CultureInfo.InvariantCulture);

    private static string Weight(UnitSystem units) => units == UnitSystem.Metric ? "kg" : "lb";

    private static string Mass(double kilograms, UnitSystem units) =>
        (units == UnitSystem.Metric ? kilograms : kilograms / InchPound.KilogramsPerPound).ToString("0.0", CultureInfo.InvariantCulture);
}
