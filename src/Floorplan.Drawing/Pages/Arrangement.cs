using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Pages;

/// <summary>How the views and the text of one sheet stand on its pages.</summary>
/// <param name="ColumnWidth">Of the columns of text, mm.</param>
/// <param name="Text">The standard with the height of this sheet's tables and notes.</param>
/// <param name="Whole">Blocks of text stay whole where they can.</param>
/// <param name="Air">Paper between two rows of text, mm.</param>
/// <param name="Side">How wide a column beside the views must be for text of its own width; null for columns of one width only.</param>
internal sealed record Arrangement(
    ViewPages Views, double ColumnWidth, DrawingStandard Text, bool Whole, double Air, double? Side = null)
{
    /// <summary>A sheet with more pages is of use to nobody; then a larger paper is asked for. Own choice.</summary>
    public const int MostPages = 200;

    /// <summary>From this share of blank paper on, another page is the lesser evil; own choice.</summary>
    private const double MostBlank = 0.33;
    private const double TooBlank = 6;

    public PageSpace Space => Views.Space;

    public double Denominator => Views.Denominator;

    /// <param name="blocksOf">The text for columns of a width.</param>
    public FlowedText Flow(Func<double, IReadOnlyList<ColumnBlock>> blocksOf)
    {
        var beside = Side is { } narrowest ? new SideText(Views.Sides(narrowest), blocksOf, Air) : null;
        var flowed = Flow(blocksOf(ColumnWidth), beside, MostPages, []);
        return beside is null ? flowed : flowed with
        {
            Rows = [.. flowed.Rows.Concat(beside.Rows).OrderBy(r => r.Page)],
            Pages = Math.Max(flowed.Pages, beside.AfterLast),
        };
    }

    /// <summary>The text that does not stand beside the views.</summary>
    /// <param name="blocks">All text for columns of this width.</param>
    /// <param name="beside">What stands beside the views; null for nothing.</param>
    /// <param name="mostPages">More of them are not tried.</param>
    /// <param name="rows">Takes the rows of the answer.</param>
    public FlowedText Flow(IReadOnlyList<ColumnBlock> blocks, SideText? beside, int mostPages, List<PlacedRow> rows)
        => beside is null
            ? TextFlow.Of(blocks, Views.Columns(ColumnWidth), Whole, Air, mostPages, rows)
            : TextFlow.Of(
                blocks.Where((_, i) => !beside.Taken.Contains(i)), Views.Columns(ColumnWidth, beside.Columns, beside.Pages), Whole, Air,
                mostPages, rows);

    /// <summary>How good it is: few pages, and none with much blank paper. Less is better, and a page never costs less than 1.</summary>
    /// <param name="text">Without what stands beside the views.</param>
    /// <param name="beside">What stands beside the views; null for nothing.</param>
    /// <param name="enough">From here on the answer may be any figure above it.</param>
    public double Cost(FlowedText text, SideText? beside, double enough)
    {
        int pages = Math.Max(Math.Max(1, Views.Pages.Count), Math.Max(text.Pages, beside?.AfterLast ?? 0));
        double cost = 0;
        var (row, side) = (0, 0);
        for (int page = 0; page < pages && cost < enough; page++)
        {
            var ink = Views.Ink(page);
            Take(ink, text.Rows, ref row, page);
            Take(ink, beside?.Rows ?? [], ref side, page);
            cost += 1 + ink.Blank + (TooBlank * Math.Max(0, ink.Blank - MostBlank));
        }

        return cost;
    }

    /// <summary>The ink of the rows of one page, of which <paramref name="next"/> is the first.</summary>
    private void Take(InkEstimate ink, IReadOnlyList<PlacedRow> rows, ref int next, int page)
    {
        for (; next < rows.Count && rows[next].Page == page; next++)
        {
            var placed = rows[next];
            ink.Add(PaperBox.At(placed.At, Math.Min(placed.Width, placed.Row.Used), placed.Row.Height + Air));
        }
    }
}
