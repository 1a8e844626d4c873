using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Scene;

namespace Floorplan.Print.Pieces;

/// <summary>
/// A set cut into pages for a small printer, at true scale: nothing is made smaller, because text of 2.5 mm at half size is read by nobody.
/// </summary>
public static class PiecePrint
{
    /// <param name="paper">What the printer holds; it may lie or stand.</param>
    /// <returns>The page that says how the pieces go together, then the pieces sheet by sheet; one page a sheet where the paper holds it
    /// whole.</returns>
    public static IReadOnlyList<PiecePage> Of(IReadOnlyList<SheetScene> sheets, PaperSize paper)
    {
        var pages = new List<PiecePage>();
        foreach (var sheet in sheets)
        {
            if (Holds(paper, sheet))
            {
                pages.Add(Whole(sheet));
                continue;
            }

            var grid = PieceGrid.Of(sheet, paper);
            if (!pages.Exists(p => p.Sheet is null))
            {
                string size = sheet.Paper;
                int alike = sheets.Count(s => !Holds(paper, s));
                pages.Insert(0, PieceGuide.Of(grid, new PaperSize(size, sheet.WidthMm, sheet.HeightMm), alike));
            }

            pages.AddRange(Enumerable.Range(0, grid.Count).Select(i => Piece(sheet, grid, i)));
        }

        return pages;
    }

    private static bool Holds(PaperSize paper, SheetScene sheet) =>
        Math.Max(paper.Width, paper.Height) >= Math.Max(sheet.WidthMm, sheet.HeightMm) - 0.1
        && Math.Min(paper.Width, paper.Height) >= Math.Min(sheet.WidthMm, sheet.HeightMm) - 0.1;

    private static PiecePage Whole(SheetScene sheet) => new(
        sheet, PaperBox.At(new(0, 0), sheet.WidthMm, sheet.HeightMm), new(0, 0), sheet with { Items = [] });

    private static PiecePage Piece(SheetScene sheet, PieceGrid grid, int index)
    {
        var (row, column) = Math.DivRem(index, grid.Across);
        var window = grid.Window(column, row);
        var place =
            PaperBox.At(
                new(
                    (grid.Paper.Width - window.Width) / 2,
                    PieceGrid.Margin + PieceGrid.Head
                        + ((grid.Paper.Height - (2 * PieceGrid.Margin) - PieceGrid.Head - window.Height) / 2)),
                window.Width, window.Height);
        var scene = new SceneBuilder();
        var marks = new PieceMarks(scene, grid, place);
        string name = FormattableString.Invariant($"sheet {sheet.Number}, piece {index + 1} of {grid.Count}");
        marks.Head(name);
        marks.Ticks();
        marks.Matches(column, row);
        return new PiecePage(
            sheet, window, new(place.Left, place.Top),
            new SheetScene(sheet.Name, $"{sheet.Title}, {name}", sheet.Description, grid.Paper.Width, grid.Paper.Height, [.. scene.Items]));
    }
}
