using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Hatching;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Quantities;
using Floorplan.Model;

namespace Floorplan.Drawing.Frames;

/// <summary>Chooses paper and scale, lays out frame, views and text space, and places all labels.</summary>
public static class SheetComposer
{
    /// <summary>Height of the strip under a view: its title, bar scale and north arrow.</summary>
    private const double Strip = 15;

    /// <summary>Keeps views clear of the centring marks, which reach 5 mm into the drawing space.</summary>
    private const double Pad = 6;

    /// <summary>The share of labels that may stand away from what they name before a larger scale is tried; own choice.</summary>
    private const double MostCrowding = 0.15;

    /// <summary>The sheet, or why it is not drawn: a plan may ask for a paper or a scale that cannot hold it.</summary>
    public static (SheetScene? Sheet, NotDrawn? Reason) Compose(SheetContent content)
    {
        var drawing = Best(content);
        if (content.Wish is null or { Paper: null, Scale: null })
        {
            return (drawing.Scene, null);
        }

        // A long plan is smaller than wanted without a wish too; most are not, and need no second drawing to know.
        double wanted = ScaleSeries.SmallestWanted(content.Units);
        var smallest = new Lazy<double>(() => Math.Max(wanted, Best(content with { Wish = null }).Layout.Denominator));
        return Holds(drawing, content.Wish)
            ? (drawing.Scene, null)
            : (null, SheetWishes.Refuse(content, smallest.Value, wish => Holds(Best(content with { Wish = wish }), wish)));

        bool Holds(Drawing tried, SheetWish wish) => tried is { Complete: true, Layout.ViewsFit: true }
            && (wish.Scale is not null || tried.Layout.Denominator <= wanted || tried.Layout.Denominator <= smallest.Value);
    }

    private static Drawing Best(SheetContent content)
    {
        var standard = DrawingStandard.For(content.Units);
        var papers = Papers(content);
        var text = new MeasuredText(content, standard);
        Drawing? best = null;
        foreach (var layout in Layouts(content, text, standard))
        {
            // When all fits the usual paper but labels crowd, a larger scale on the next paper is tried.
            if (best is { Complete: true }
                && (layout.Denominator >= best.Layout.Denominator || layout.Paper != papers.ElementAtOrDefault(1)))
            {
                continue;
            }

            var drawing = Draw(content, text, layout, standard);
            if (best is { Complete: true })
            {
                return drawing.Complete && drawing.Crowding < best.Crowding ? drawing : best;
            }

            best = drawing;
            if (layout.Paper == papers[^1] || drawing.Complete && (drawing.Crowding <= MostCrowding || layout.Paper != papers[0]))
            {
                return drawing;
            }
        }

        return best!;
    }

    /// <summary>
    /// Papers from small to large, each with the largest scale that leaves room for the text. When the text finds room on none, the
    /// largest paper with the largest scale that holds the views.
    /// </summary>
    private static IEnumerable<Layout> Layouts(SheetContent content, MeasuredText text, DrawingStandard standard)
    {
        var papers = Papers(content);
        var scales = content.Wish?.Scale is { } denominator and > 0 ? [denominator] : ScaleSeries.For(content.Units);
        double smallest = ScaleSeries.SmallestWanted(content.Units);
        Layout? fallback = null;
        foreach (var paper in papers)
        {
            bool largest = paper == papers[^1];
            var fitting = scales.Where(s => s <= smallest || largest || scales.Count == 1)
                .SelectMany(s => (Layout[])[Layout.Of(content, paper, s, centred: true), Layout.Of(content, paper, s, centred: false)])
                .Where(l => l.ViewsFit);
            fallback = largest ? fitting.FirstOrDefault() : null;
            if (fitting.FirstOrDefault(l => new TextColumns(l.Columns, standard).Fill(text.For(l.Columns[0].Width), null)) is { } layout)
            {
                yield return layout;
            }
        }

        yield return fallback ?? Layout.Of(content, papers[^1], scales[^1], centred: true);
    }

    private static IReadOnlyList<PaperSize> Papers(SheetContent content) =>
        content.Wish?.Paper is { } name && PaperSize.Find(name) is { } wished ? [wished] : PaperSize.For(content.Units);

    private static Drawing Draw(SheetContent content, MeasuredText text, Layout layout, DrawingStandard standard)
    {
        var scene = new SceneBuilder(layout.Denominator);
        var labels = new LabelPlacer(scene);
        SheetFrame.Draw(scene, layout.Paper, layout.Inside, standard);
        TitleBlock.Draw(
            scene, layout.Inside, content.TitleBlock, ScaleSeries.Text(layout.Denominator, content.Units), layout.Paper.Name,
            content.Units == UnitSystem.Metric ? "millimetres" : "feet and inches", standard);
        for (int i = 0; i < content.Views.Count; i++)
        {
            content.Views[i].Draw(new ViewCanvas(scene, labels, layout.Views[i], layout.Denominator, standard));
            DrawStrip(scene, content, content.Views[i], layout.Views[i], layout, standard);
        }

        var placed = labels.Place(layout.ViewArea);
        var keyed = placed.Where(p => p.Outcome is LabelOutcome.Keyed or LabelOutcome.Unplaced && !p.Request.Optional)
            .Select(p => (IReadOnlyList<Cell>)[p.KeyNumber ?? "-", p.Request.KeyText ?? string.Join(' ', p.Request.Lines)])
            .ToList();
        IEnumerable<TextBlock> blocks = text.For(layout.Columns[0].Width);
        if (keyed.Count > 0)
        {
            blocks = [TableBlock.Of(new KeyTable("Key to marks", ["Mark", "Text"], keyed), layout.Columns[0].Width, standard), .. blocks];
        }

        if (labels.AllNotShown.Count > 0)
        {
            var rows = labels.AllNotShown.Distinct().Select(n => (IReadOnlyList<Cell>)[n.Of, n.Words]).ToList();
            blocks =
                [.. blocks, TableBlock.Of(new KeyTable("Not shown at its place", ["Of", "What"], rows), layout.Columns[0].Width, standard)];
        }

        bool complete = new TextColumns(layout.Columns, standard).Fill(blocks, scene);
        SceneHatches.Draw(scene);
        var sheet =
            new SheetScene(
                content.Name, $"{SafeText.Clean(content.TitleBlock.Title)}: {content.TitleBlock.SheetTitle}",
                SafeText.Clean(content.Description, 600), layout.Paper.Width, layout.Paper.Height, [.. scene.Items], layout.Denominator)
            {
                Datum = scene.Datum,
                Figures =
                [
                    .. content.Tables.SelectMany(t => t.Rows).SelectMany(r => r).SelectMany(c => c.Figures),
                    .. placed.SelectMany(p => p.Request.Figures)],
            };
        return new Drawing(layout, sheet, complete, placed.Count == 0
            ? 0
            : placed.Count(p => p.Outcome != LabelOutcome.AtTarget) / (double)placed.Count);
    }

    private static void DrawStrip(
        SceneBuilder scene, SheetContent content, ISheetView view, PaperBox box, Layout layout, DrawingStandard standard)
    {
        double y = box.Bottom + 8;
        double x = box.Left + 2;
        if (view.IsPlan)
        {
            NorthArrow.Draw(scene, new(x + 5, y), content.TrueNorth, standard);
            x += NorthArrow.Width;
        }

        string text = StripText(view, layout.Denominator, content.Units);
        double width = TextMeasure.Width(text, standard.SubtitleHeight, true);
        scene.Text(
            new TextItem(
                text, new(x, y + (standard.SubtitleHeight / 2)), standard.SubtitleHeight, TextAnchor.Start, Layers.Text, Bold: true));
        BarScale.Draw(scene, new(x + width + 6, y - 2), layout.Denominator, content.Units, standard);
    }

    private static string StripText(ISheetView view, double denominator, UnitSystem units)
        => $"{view.Title}  {ScaleSeries.Text(denominator, units)}";

    /// <param name="Complete">All text found room.</param>
    /// <param name="Crowding">The share of labels that are not at what they name.</param>
    private sealed record Drawing(Layout Layout, SheetScene Scene, bool Complete, double Crowding);

    /// <summary>Where everything goes on one paper at one scale.</summary>
    private sealed record Layout(
        PaperSize Paper, double Denominator, PaperBox Inside, IReadOnlyList<PaperBox> Views, PaperBox ViewArea,
        IReadOnlyList<PaperBox> Columns, bool ViewsFit)
    {
        /// <param name="centred">The view in the middle; else at the left, with the text beside it.</param>
        public static Layout Of(SheetContent content, PaperSize paper, double denominator, bool centred)
        {
            var inside = SheetFrame.Inside(paper, content.Units);
            var rows = Rows(content, denominator, inside.Width - (2 * Pad));
            double width = rows.Max(r => r.Width);
            double height = rows.Sum(r => r.Height + Strip);
            double left = centred ? inside.Left + ((inside.Width - width) / 2) : inside.Left + Pad;
            bool besideTitle = left + width + Pad <= inside.Right - TitleBlock.Width;
            bool fits = width <= inside.Width - (2 * Pad) && height <= inside.Height - (2 * Pad) - (besideTitle ? 0 : TitleBlock.Height);
            double top = inside.Top + Pad;
            var views = new List<PaperBox>();
            foreach (var row in rows)
            {
                double at = left + ((width - row.Width) / 2);
                foreach (var (size, cell) in row.Cells)
                {
                    views.Add(PaperBox.At(new(at, top), size.Width, size.Height));
                    at += cell + Pad;
                }

                top += row.Height + Strip;
            }

            // Under a narrow view the strip's title and bar scale still need their width.
            var space = new PaperBox(left, inside.Top, Math.Max(left + width, Math.Min(inside.Right, left + 170)), top);
            var area = new PaperBox(views.Min(v => v.Left), inside.Top + Pad, views.Max(v => v.Right), top - Strip);
            return new Layout(paper, denominator, inside, views, area, TextColumns.Around(inside, space), fits);
        }

        /// <summary>
        /// Views side by side in their order, as many as the paper is wide. One view stands alone, however wide its strip is.
        /// </summary>
        private static List<ViewRow> Rows(SheetContent content, double denominator, double most)
        {
            var rows = new List<ViewRow>();
            foreach (var view in content.Views)
            {
                var size = view.Measure(denominator);
                double strip = content.Views.Count == 1 ? 0 : StripWidth(view, denominator, content.Units);
                double cell = Math.Max(size.Width, strip);
                if (rows.Count > 0 && rows[^1].Width + Pad + cell <= most)
                {
                    rows[^1] = new ViewRow([.. rows[^1].Cells, (size, cell)]);
                }
                else
                {
                    rows.Add(new ViewRow([(size, cell)]));
                }
            }

            return rows;
        }

        private static double StripWidth(ISheetView view, double denominator, UnitSystem units) =>
            TextMeasure.Width(StripText(view, denominator, units), DrawingStandard.For(units).SubtitleHeight, true) + 8 + BarScale.Width
                + (view.IsPlan ? NorthArrow.Width : 0);
    }

    /// <param name="Cells">Each view's paper, and the width that it stands in, as wide as the strip under it at least.</param>
    private sealed record ViewRow(IReadOnlyList<(PaperSpace Size, double Cell)> Cells)
    {
        public double Width => Cells.Sum(c => c.Cell) + (Pad * (Cells.Count - 1));

        public double Height => Cells.Max(c => c.Size.Height);
    }
}
