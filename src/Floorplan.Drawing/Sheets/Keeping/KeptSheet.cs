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
    private readonly SheetScene? scene;

    private KeptSheet(SheetContent content, List<RecordedView> views, List<RecordedLegend> legend, SheetScene? scene)
    {
        this.content = content;
        this.views = views;
        this.legend = legend;
        this.scene = scene;
    }

    public static (SheetScene? Sheet, NotDrawn? Reason, KeptSheet Kept) Draw(SheetContent content)
    {
        List<RecordedView> views = [.. content.Views.Select(v => new RecordedView(v))];
        List<RecordedLegend> legend = [.. content.Legend.Select(l => new RecordedLegend(l))];
        var (sheet, reason) = SheetComposer.Compose(content with { Views = [.. views], Legend = [.. legend.Select(l => l.Entry)] });
        return (sheet, reason, new KeptSheet(content, views, legend, sheet));
    }

    /// <summary>
    /// The sheet of a new content when it is the old one but for the hash of the text in its title block; null when it must be drawn.
    /// </summary>
    public SheetScene? For(SheetContent now)
    {
        var figures = new FigurePairs();
        return scene is not null && SameWords(now, figures) && SamePictures(now, figures) && WithSource(now) is { } sheet
            ? sheet with { Figures = [.. sheet.Figures.Select(figures.Of)] }
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
    };

    /// <summary>The title block stands outside of the views, so nothing else looks at how wide its text is.</summary>
    private SheetScene? WithSource(SheetContent now)
    {
        var standard = DrawingStandard.For(now.Units);
        var (text, height) = TitleBlock.SourceText(content.TitleBlock, standard);
        var (newText, newHeight) = TitleBlock.SourceText(now.TitleBlock, standard);
        var items = scene!.Items.ToArray();
        int at = -1;
        for (int i = 0; i < items.Length; i++)
        {
            if (items[i] is TextItem { Layer: Layers.TitleBlock } item && item.Text == text && item.CapHeight == height)
            {
                if (at >= 0)
                {
                    return null;
                }

                at = i;
            }
        }

        if (at < 0)
        {
            return null;
        }

        items[at] = (TextItem)items[at] with { Text = newText, CapHeight = newHeight };
        return scene with { Items = items };
    }
}
