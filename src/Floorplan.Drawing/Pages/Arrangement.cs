using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Pages;

/// <summary>How the views and the text of one sheet stand on its pages.</summary>
/// <param name="Views">Of each page that has views.</param>
/// <param name="Columns">Columns of text across a page.</param>
/// <param name="Text">The standard with the height of this sheet's tables and notes.</param>
/// <param name="Whole">Blocks of text stay whole where they can.</param>
/// <param name="Air">Paper between two rows of text, mm.</param>
internal sealed record Arrangement(
    PageSpace Space, double Denominator, IReadOnlyList<IReadOnlyList<PlacedView>> Views, int Columns, DrawingStandard Text, bool Whole,
    double Air)
{
    /// <summary>A sheet with more pages is of use to nobody; then a larger paper is asked for. Own choice.</summary>
    public const int MostPages = 200;

    /// <summary>From this share of blank paper on, another page is the lesser evil; own choice.</summary>
    private const double MostBlank = 0.33;
    private const double TooBlank = 6;

    public double ColumnWidth => Space.ColumnWidth(Columns);

    public FlowedText Flow(IEnumerable<Blocks.TextBlock> blocks)
    {
        var rest = Space.Columns(Columns, []);
        var pages = Views.Select(p => Space.Columns(Columns, p.Select(v => v.Whole))).ToList();
        return TextFlow.Of(blocks, page => page < pages.Count ? pages[page] : rest, Whole, Air, MostPages, Text);
    }

    /// <summary>How good it is: few pages, and none with much blank paper. Less is better.</summary>
    public double Cost(FlowedText text)
        => Inks(text).Sum(i => 1 + i.Blank + (TooBlank * Math.Max(0, i.Blank - MostBlank)));

    private List<InkEstimate> Inks(FlowedText text)
    {
        int pages = Math.Max(1, Math.Max(Views.Count, text.Pages));
        var ink = Enumerable.Range(0, pages).Select(_ => new InkEstimate(Space)).ToList();
        for (int i = 0; i < Views.Count; i++)
        {
            foreach (var view in Views[i])
            {
                ink[i].AddView(view.Box, view.View.Density);
                ink[i].Add(view.Strip);
            }
        }

        foreach (var row in text.Rows)
        {
            ink[row.Page].Add(PaperBox.At(row.At, Math.Min(row.Width, row.Row.Used), row.Row.Height + Air));
        }

        return ink;
    }
}
