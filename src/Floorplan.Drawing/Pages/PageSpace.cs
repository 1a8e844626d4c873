using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Quantities;

namespace Floorplan.Drawing.Pages;

/// <summary>The drawing space of one sheet of paper: what is inside its frame, and the title block in the corner of it.</summary>
internal sealed record PageSpace(PaperSize Paper, PaperBox Inside, PaperBox Title)
{
    /// <summary>Keeps views and text clear of the centring marks, which reach 5 mm into the drawing space.</summary>
    public const double Pad = 6;

    /// <summary>Between two columns of text, and between text and a view.</summary>
    public const double Gap = 8;

    /// <summary>A column lower than this is not worth its title; own choice.</summary>
    private const double LowestColumn = 16;

    /// <summary>A view keeps blank paper at its own edge, so a column may begin this near to it, mm; own choice.</summary>
    private const double BesideView = 3;

    public double Width => Inside.Width - (2 * Pad);

    public double Height => Inside.Height - (2 * Pad);

    public static PageSpace Of(PaperSize paper, UnitSystem units, double titleHeight)
    {
        var inside = SheetFrame.Inside(paper, units);
        return new PageSpace(
            paper, inside, new PaperBox(inside.Right - TitleBlock.Width, inside.Bottom - titleHeight, inside.Right, inside.Bottom));
    }

    /// <summary>How far down a thing may reach that ends at <paramref name="right"/>: to the foot of the page or the title block.</summary>
    public double Lowest(double right) => right + Pad <= Title.Left ? Inside.Bottom : Title.Top;

    public double ColumnWidth(int count) => (Width - ((count - 1) * Gap)) / count;

    /// <summary>Columns of equal width, under the views that stand over them and above the title block, left to right.</summary>
    public IReadOnlyList<PaperBox> Columns(int count, IEnumerable<PaperBox> views)
    {
        PaperBox[] taken = [.. views];
        double width = ColumnWidth(count);
        var columns = new List<PaperBox>();
        for (int i = 0; i < count; i++)
        {
            double left = Inside.Left + Pad + (i * (width + Gap));
            double top = taken.Where(v => v.Left - BesideView < left + width && left < v.Right + BesideView).Select(v => v.Bottom)
                .DefaultIfEmpty(Inside.Top).Max();
            bool overTitle = left + width + Pad > Title.Left;
            var column = new PaperBox(left, top + Pad, left + width, (overTitle ? Title.Top : Inside.Bottom) - Pad);
            if (column.Height >= LowestColumn)
            {
                columns.Add(column);
            }
        }

        return columns;
    }
}
