using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Sheets.Keeping;

/// <summary>One sheet as it was drawn last, with all that it was made from.</summary>
internal sealed class KeptSheet
{
    private readonly SheetContent content;
    private readonly List<RecordedView> views;
    private readonly List<RecordedLegend> legend;
    private readonly IReadOnlyList<SheetScene> pages;

    private KeptSheet(SheetContent content, List<RecordedView> views, List<RecordedLegend> legend, IReadOnlyList<SheetScene> pages)
    {
        this.content = content;
        this.views = views;
        this.legend = legend;
        this.pages = pages;
    }

    public static (IReadOnlyList<SheetScene> Pages, NotDrawn? Reason, KeptSheet Kept) Draw(SheetContent content)
    {
        List<RecordedView> views = [.. content.Views.Select(v => new RecordedView(v))];
        List<RecordedLegend> legend = [.. content.Legend.Select(l => new RecordedLegend(l))];
        var (pages, reason) = SheetComposer.Compose(content with { Views = [.. views], Legend = [.. legend.Select(l => l.Entry)] });
        return (pages, reason, new KeptSheet(content, views, legend, pages));
    }

    /// <summary>
    /// The sheet of a new content when it is the old one but for the hash of the text in its title block; null when it must be drawn.
    /// </summary>
    public IReadOnlyList<SheetScene>? For(SheetContent now)
    {
        var figures = new FigurePairs();
        return pages.Count > 0 && SameWords(now, figures) && SamePictures(now, figures) && WithSource(now) is { } moved
            ? [.. moved.Select(p => p with { Figures = [.. p.Figures.Select(figures.Of)] })]
            : null;
    }

    private bool SameWords(SheetContent now, FigurePairs figures) =>
        Bare(content) == Bare(now)
        && content.Revisions.SequenceEqual(now.Revisions)
        && content.Notes.SequenceEqual(now.Notes)
        && content.Findings.SequenceEqual(now.Findings)
        && content.Cautions.SequenceEqual(now.Cautions)
        && content.Tables.Count == now.Tables.Count
        && content.Tables.Zip(now.Tables).All(t => SameDrawing.Table(t.First, t.Second))
        && SameDrawing.Cells(content.Tables).Zip(SameDrawing.Cells(now.Tables))
            .All(c => figures.Add(c.First.Figures, c.Second.Figures));

    private bool SamePictures(SheetContent now, FigurePairs figures) =>
        legend.Count == now.Legend.Count
        && views.Count == now.Views.Count
        && legend.Zip(now.Legend).All(l => l.First.DrawsAs(l.Second))
        && views.Zip(now.Views).All(v => v.First.AnswersAs(v.Second, figures));

    /// <summary>A property that is added later counts; what is left out here is compared one by one.</summary>
    private static SheetContent Bare(SheetContent content) => content with
    {
        TitleBlock = content.TitleBlock with { SourceHash = "" },
        Views = [],
        Legend = [],
        Revisions = [],
        Notes = [],
        Findings = [],
        Cautions = [],
        Tables = [],
        Wish = content.Wish is { } wish ? wish with { Span = default } : null,
        Place = default,
    };

    /// <summary>The hash has a line of its own in the title block, so nothing else looks at how wide it is.</summary>
    private IReadOnlyList<SheetScene>? WithSource(SheetContent now)
    {
        string was = content.TitleBlock.SourceHash;
        var moved = pages.Select(p => WithHash(p, was, now.TitleBlock.SourceHash)).ToList();
        return moved.Contains(null) ? null : [.. moved.OfType<SheetScene>()];
    }

    private static SheetScene? WithHash(SheetScene page, string was, string hash)
    {
        var items = page.Items.ToArray();
        bool IsHash(SceneItem item) => item is TextItem { Layer: Layers.TitleBlock } text && text.Text == was;
        if (was.Length == 0 || hash.Length != was.Length || items.Count(IsHash) != 1)
        {
            return null;
        }

        int at = Array.FindIndex(items, IsHash);
        items[at] = (TextItem)items[at] with { Text = hash };
        return page with { Items = items };
    }
}
