using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Hatching;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Pages;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Quantities;

namespace Floorplan.Drawing.Frames;

/// <summary>
/// Draws one sheet: frame, title block, views with their labels, and text. What does not fit its paper goes on continuation sheets.
/// </summary>
public static class SheetComposer
{
    /// <summary>The pages of the sheet, or why it is not drawn: a plan may ask for a paper or a scale that cannot hold it.</summary>
    public static (IReadOnlyList<SheetScene> Pages, NotDrawn? Reason) Compose(SheetContent content)
    {
        if (Arranged(content) is { } arranged && Drawing(content, arranged.Arranger, arranged.Arrangement) is { } pages)
        {
            return (pages, null);
        }

        return ([], SheetWishes.Refuse(content, wish => Arranged(content with { Wish = wish }) is not null));
    }

    internal static PageSpace Space(SheetContent content)
    {
        // All pages of a sheet have one title block: as high as that of the page with the longest number.
        double title = TitleBlock.Height(
            content.TitleBlock with { Page = Arrangement.MostPages, Pages = Arrangement.MostPages },
            ScaleSeries.Text(ScaleSeries.SmallestWanted(content.Units), content.Units), content.Paper.Name, Units(content),
            DrawingStandard.For(content.Units));
        return PageSpace.Of(content.Paper, content.Units, title);
    }

    private static (Arranger Arranger, Arrangement Arrangement)? Arranged(SheetContent content)
    {
        var space = Space(content);
        var arranger = new Arranger(content, space);
        foreach (double[] scales in ScaleChoice.Of(content, space))
        {
            if (arranger.Best(scales) is { } best)
            {
                return double.IsInfinity(best.Cost) ? null : (arranger, best.Arrangement);
            }
        }

        return null;
    }

    /// <summary>Null when the text takes more pages than a sheet may have.</summary>
    private static IReadOnlyList<SheetScene>? Drawing(SheetContent content, Arranger arranger, Arrangement arrangement)
    {
        var standard = DrawingStandard.For(content.Units);
        var pages = new List<SceneBuilder>();
        var placed = new List<LabelResult>();
        var notShown = new List<(string Of, string Words)>();
        foreach (var views in arrangement.Views.Pages)
        {
            var scene = new SceneBuilder(arrangement.Denominator);
            var labels = new LabelPlacer(scene);
            labels.KeepOut(arrangement.Space.Title);
            foreach (var view in views)
            {
                view.View.Draw(new ViewCanvas(scene, labels, view.Box, arrangement.Denominator, standard));
                ViewStrip.Draw(scene, content, view, arrangement.Denominator);
            }

            var area = views.Aggregate(PaperBox.Nothing, (all, v) => all.With(v.Box));
            placed.AddRange(labels.Place(area, placed.Count(p => p.KeyNumber is not null)));
            notShown.AddRange(labels.AllNotShown);
            pages.Add(scene);
        }

        arrangement = arranger.WithText(arrangement, Keys(placed), NotShown(notShown));
        var text = arranger.Flow(arrangement);
        if (!text.Complete)
        {
            return null;
        }

        while (pages.Count < Math.Max(1, text.Pages))
        {
            pages.Add(new SceneBuilder(arrangement.Denominator));
        }

        foreach (var row in text.Rows)
        {
            row.Row.Draw(pages[row.Page], row.At);
        }

        return [.. pages.Select((scene, i) => Finished(content, arrangement, scene, i + 1, pages.Count) with
        {
            Figures = i > 0 ? [] :
            [
                .. content.Tables.SelectMany(t => t.Rows).SelectMany(r => r).SelectMany(c => c.Figures),
                .. placed.SelectMany(p => p.Request.Figures),
            ],
        })];
    }

    private static SheetScene Finished(SheetContent content, Arrangement arrangement, SceneBuilder scene, int page, int pages)
    {
        var standard = DrawingStandard.For(content.Units);
        var fields = content.TitleBlock with { Page = page, Pages = pages };
        SheetFrame.Draw(scene, arrangement.Space.Paper, arrangement.Space.Inside, arrangement.Space.Title, standard);
        bool drawn = page <= arrangement.Views.Pages.Count && arrangement.Views.Pages[page - 1].Any(v => v.View.HasScale);
        TitleBlock.Draw(
            scene, arrangement.Space.Title, fields, drawn ? ScaleSeries.Text(arrangement.Denominator, content.Units) : "none",
            arrangement.Space.Paper.Name, Units(content), standard);
        SceneHatches.Draw(scene);
        string part = pages > 1 ? FormattableString.Invariant($", {page} of {pages}") : "";
        return new SheetScene(
            page == 1 ? content.Name : FormattableString.Invariant($"{fields.PageNumber}{content.Name[content.Name.IndexOf('-')..]}"),
            $"{SafeText.Clean(content.TitleBlock.Title)}: {content.TitleBlock.SheetTitle}{part}",
            SafeText.Clean(content.Description, 600) + (page > 1 ? $" Continuation sheet {fields.PageNumber}{part}." : ""),
            arrangement.Space.Paper.Width, arrangement.Space.Paper.Height, [.. scene.Items], arrangement.Denominator)
        {
            Datum = scene.Datum,
            Sheet = content.TitleBlock.Sheet,
            Page = page,
            Pages = pages,
            Paper = arrangement.Space.Paper.Name,
            Inside = arrangement.Space.Inside,
        };
    }

    private static KeyTable Keys(IEnumerable<LabelResult> placed) => new(
        "Key to marks", ["Mark", "Text"],
        [
            .. placed.Where(p => p.Outcome is LabelOutcome.Keyed or LabelOutcome.Unplaced && !p.Request.Optional)
                .Select(p => (IReadOnlyList<Cell>)
                [
                    p.KeyNumber ?? p.Request.KeyMark ?? "-", p.Request.KeyText ?? string.Join(' ', p.Request.Lines),
                ]),
        ]);

    private static KeyTable NotShown(IEnumerable<(string Of, string Words)> notShown)
        => new("Not shown at its place", ["Of", "What"], [.. notShown.Distinct().Select(n => (IReadOnlyList<Cell>)[n.Of, n.Words])]);

    private static string Units(SheetContent content) => content.Units == UnitSystem.Metric ? "millimetres" : "feet and inches";
}
