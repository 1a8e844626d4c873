using UglyToad.PdfPig.Content;

namespace Floorplan.Tests.Outside;

/// <summary>Lines of letters on a page, parted into cells where a gap is too wide for a space.</summary>
internal static class PrintedTable
{
    private const double PointsPerMm = 72 / 25.4;

    /// <summary>A space of the lettering of tables is under 1 mm, columns stand 3 mm apart.</summary>
    private const double CellGap = 2 * PointsPerMm;

    /// <summary>Every cell begins a line of its own, with those to its right behind it.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> LinesOf(Page page)
    {
        var lines = new List<IReadOnlyList<string>>();
        foreach (var row in page.Letters.Where(l => l.TextOrientation == TextOrientation.Horizontal)
            .GroupBy(l => Math.Round(l.StartBaseLine.Y, 1)))
        {
            var cells = new List<string>();
            double end = double.NegativeInfinity;
            foreach (var letter in row.OrderBy(l => l.StartBaseLine.X))
            {
                if (letter.StartBaseLine.X - end > CellGap)
                {
                    cells.Add("");
                }

                cells[^1] += letter.Value == "\u00A0" ? " " : letter.Value;
                end = letter.EndBaseLine.X;
            }

            lines.AddRange(cells.Select((_, i) => (IReadOnlyList<string>)[.. cells.Skip(i).Select(c => c.Trim())]));
        }

        return lines;
    }
}
