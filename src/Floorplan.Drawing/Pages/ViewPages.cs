using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Pages;

/// <summary>
/// The views of a sheet where they stand, page by page, and what they leave for text. Many arrangements of text are tried round the same
/// views, so each answer is worked out once.
/// </summary>
internal sealed class ViewPages(PageSpace space, double denominator, IReadOnlyList<IReadOnlyList<PlacedView>> pages)
{
    private readonly Dictionary<int, (IReadOnlyList<PaperBox>[] Pages, IReadOnlyList<PaperBox> After)> columns = [];
    private readonly InkEstimate blank = new(space, []);
    private readonly InkEstimate[] inks = [.. pages.Select(p => new InkEstimate(space, p))];

    public PageSpace Space => space;

    public double Denominator => denominator;

    /// <summary>Of each page that has views.</summary>
    public IReadOnlyList<IReadOnlyList<PlacedView>> Pages => pages;

    /// <summary>What is on a page before its text.</summary>
    public InkEstimate Ink(int page) => (page < inks.Length ? inks[page] : blank).Copy();

    /// <summary>The columns of each page, from 0, where so many stand across it.</summary>
    public Func<int, IReadOnlyList<PaperBox>> Columns(int count)
    {
        if (!columns.TryGetValue(count, out var known))
        {
            columns[count] = known = ([.. pages.Select(p => space.Columns(count, p.Select(v => v.Whole)))], space.Columns(count, []));
        }

        return page => page < known.Pages.Length ? known.Pages[page] : known.After;
    }
}
