using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Pages;

/// <summary>
/// The views of a sheet where they stand, page by page, and what they leave for text. Many arrangements of text are tried round the same
/// views, so each answer is worked out once.
/// </summary>
internal sealed class ViewPages(PageSpace space, double denominator, IReadOnlyList<IReadOnlyList<PlacedView>> pages)
{
    private readonly Dictionary<double, (IReadOnlyList<PaperBox>[] Pages, IReadOnlyList<PaperBox> After)> columns = [];
    private readonly InkEstimate blank = new(space, []);
    private readonly InkEstimate[] inks = [.. pages.Select(p => new InkEstimate(space, p))];

    public PageSpace Space => space;

    public double Denominator => denominator;

    /// <summary>Of each page that has views.</summary>
    public IReadOnlyList<IReadOnlyList<PlacedView>> Pages => pages;

    /// <summary>What is on a page before its text.</summary>
    public InkEstimate Ink(int page) => (page < inks.Length ? inks[page] : blank).Copy();

    /// <summary>The widths that one column, or two, have beside the views of a page.</summary>
    public IEnumerable<double> WidthsBeside => pages.Select(p => space.Beside(p.Select(v => v.Whole))).Distinct()
        .SelectMany(b => new[] { b, (b - PageSpace.Gap) / 2 });

    /// <summary>The column beside the views of each page that has them.</summary>
    public IReadOnlyList<PaperBox?> Sides(double narrowest)
        => [.. pages.Select(p => space.Side(narrowest, p.Select(v => v.Whole)))];

    /// <summary>The columns of each page, from 0, of a width, where the columns beside views are taken on some pages.</summary>
    public Func<int, IReadOnlyList<PaperBox>> Columns(double width, IReadOnlyList<PaperBox?> sides, IReadOnlySet<int> taken)
    {
        var usual = Columns(width);
        var under = pages.Select((p, i) => taken.Contains(i) ? space.Columns(width, p.Select(v => v.Whole), sides[i]) : null).ToArray();
        return page => page < under.Length && under[page] is { } columns ? columns : usual(page);
    }

    /// <summary>The columns of each page, from 0, of a width.</summary>
    public Func<int, IReadOnlyList<PaperBox>> Columns(double width)
    {
        if (!columns.TryGetValue(width, out var known))
        {
            columns[width] = known = ([.. pages.Select(p => space.Columns(width, p.Select(v => v.Whole)))], space.Columns(width, []));
        }

        return page => page < known.Pages.Length ? known.Pages[page] : known.After;
    }
}
