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

    private double Right => Inside.Right - Pad;

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

    /// <summary>
    /// Columns of a width, left to right: beside the views as many as find room there, at the right edge of the page; the others under the
    /// views that stand over them; all of them above the title block.
    /// </summary>
    /// <param name="side">A column beside the views that other text stands in; null for none.</param>
    public IReadOnlyList<PaperBox> Columns(double width, IEnumerable<PaperBox> views, PaperBox? side = null)
    {
        PaperBox[] taken = [.. views];
        if (side is { } other)
        {
            return Columns(width, Spread(width, other.Left - Gap), taken);
        }

        int beside = Fit(Beside(taken), width);
        double left = Right - (beside * (width + Gap)) + Gap;
        IEnumerable<double> places = beside > 0
            ? [.. Spread(width, left - Gap), .. Enumerable.Range(0, beside).Select(i => left + (i * (width + Gap)))]
            : Spread(width, Right);
        return Columns(width, places, taken);
    }

    /// <summary>The one column beside the views, as wide as they let it be; null where it is narrower than this.</summary>
    public PaperBox? Side(double narrowest, IEnumerable<PaperBox> views)
    {
        PaperBox[] taken = [.. views];
        double width = Beside(taken);
        return width >= narrowest ? Column(Right - width, width, taken) : null;
    }

    private IReadOnlyList<PaperBox> Columns(double width, IEnumerable<double> places, PaperBox[] taken)
        => [.. places.Select(at => Column(at, width, taken)).Where(c => c.Height >= LowestColumn)];

    /// <summary>How wide the paper is at the right of these views.</summary>
    public double Beside(IEnumerable<PaperBox> views)
        => Right - views.Select(v => v.Right + BesideView).DefaultIfEmpty(Right).Max();

    private PaperBox Column(double left, double width, PaperBox[] taken)
    {
        double top = taken.Where(v => v.Left - BesideView < left + width && left < v.Right + BesideView).Select(v => v.Bottom)
            .DefaultIfEmpty(Inside.Top).Max();
        bool overTitle = left + width + Pad > Title.Left;
        return new PaperBox(left, top + Pad, left + width, (overTitle ? Title.Top : Inside.Bottom) - Pad);
    }

    /// <summary>The left edges of as many columns as there is room for from the left edge of the page to a place, evenly.</summary>
    private IEnumerable<double> Spread(double width, double to)
    {
        double left = Inside.Left + Pad;
        int count = Fit(to - left, width);
        double pitch = count > 1 ? (to - left - width) / (count - 1) : 0;
        return Enumerable.Range(0, count).Select(i => left + (i * pitch));
    }

    private static int Fit(double length, double width) => Math.Max(0, (int)((length + Gap + 1e-6) / (width + Gap)));
}
