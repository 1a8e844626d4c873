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
        var blocks = blocksOf(ColumnWidth);
        if (Side is not { } narrowest)
        {
            return TextFlow.Of(blocks, Views.Columns(ColumnWidth), Whole, Air, MostPages);
        }

        var sides = Views.Sides(narrowest);
        var beside = new SideText(sides, blocksOf, Air);
        var flowed = TextFlow.Of(
            blocks.Where((_, i) => !beside.Taken.Contains(i)), Views.Columns(ColumnWidth, sides, beside.Pages), Whole, Air, MostPages);
        return flowed with
        {
            Rows = [.. flowed.Rows.Concat(beside.Rows).OrderBy(r => r.Page)],
            Pages = Math.Max(flowed.Pages, beside.Pages.Select(p => p + 1).DefaultIfEmpty(0).Max()),
        };
    }

    /// <summary>How good it is: few pages, and none with much blank paper. Less is better.</summary>
    public double Cost(FlowedText text)
    {
        int pages = Math.Max(1, Math.Max(Views.Pages.Count, text.Pages));
        double cost = 0;
        int row = 0;
        for (int page = 0; page < pages; page++)
        {
            var ink = Views.Ink(page);
            for (; row < text.Rows.Count && text.Rows[row].Page == page; row++)
            {
                var placed = text.Rows[row];
                ink.Add(PaperBox.At(placed.At, Math.Min(placed.Width, placed.Row.Used), placed.Row.Height + Air));
            }

            cost += 1 + ink.Blank + (TooBlank * Math.Max(0, ink.Blank - MostBlank));
        }

        return cost;
    }
}
