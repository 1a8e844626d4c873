using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Sheets;

/// <summary>The sheets of the set and how many pages each has, for sheet 1.</summary>
internal static class SheetList
{
    /// <param name="drawn">The pages of all sheets but the first; those of a sheet that is not drawn this time are not counted.</param>
    public static KeyTable Of(IReadOnlyList<Sheet> sheets, IReadOnlyList<SheetScene> drawn) => new(
        "Sheets of this set", ["No", "Sheet", "Pages"],
        [
            .. sheets.Select(s => (IReadOnlyList<Cell>)
            [
                FormattableString.Invariant($"{s.Number}"), s.Title, s == sheets[0] ? "this" : Pages(s, drawn),
            ]),
        ]);

    private static string Pages(Sheet sheet, IReadOnlyList<SheetScene> drawn)
    {
        return drawn.LastOrDefault(d => d.Sheet == sheet.Number) is not { } last ? "not drawn with this page"
            : last.Pages == 1 ? Page(1)
            : last.Pages == 2 ? $"{Page(1)}, {Page(2)}"
            : $"{Page(1)} to {Page(last.Pages)}";

        string Page(int page) => PageNumber.Of(sheet.Number, page);
    }
}
