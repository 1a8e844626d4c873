using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Text;

namespace Floorplan.Drawing.Reports;

/// <summary>Blocks of a report as rows that stay whole.</summary>
/// <param name="Head">What is repeated where the rows go on on the next page; null for nothing.</param>
/// <param name="HeadAfter">The head is repeated before rows after this one.</param>
internal sealed record ReportRows(IReadOnlyList<BlockRow> Rows, BlockRow? Head = null, int HeadAfter = 0)
{
    private const double LineGap = 1.4;
    private const double Indent = 5;
    private const int LongestText = 4000;

    /// <summary>The title of a report, on its first page, and of a chapter.</summary>
    public static IEnumerable<BlockRow> Title(ReportDocument report, ReportChapter chapter, bool first, double width, DrawingStandard s)
    {
        if (first)
        {
            foreach (var row in Lines(report.Title, width, s.SheetTitleHeight, 0, true))
            {
                yield return row;
            }

            yield return new BlockRow(2, (_, _) => { });
            foreach (var row in report.Head.SelectMany(h => Lines(h, width, s.NoteHeight, 0, false)))
            {
                yield return row;
            }

            yield return new BlockRow(4, (_, _) => { });
        }

        foreach (var row in Lines(chapter.Title, width, s.ViewTitleHeight, 0, true))
        {
            yield return row;
        }

        yield return new BlockRow(3, (_, _) => { });
    }

    /// <param name="plan">Text of the plan.</param>
    public static ReportRows Of(ReportBlock block, SourceText? plan, double width, DrawingStandard s)
    {
        switch (block)
        {
            case ReportHeading heading:
                return new ReportRows([.. Lines(heading.Text, width, s.SubtitleHeight, 0, true)]);
            case ReportText { IsCaution: true } text:
                return new ReportRows([.. Caution(text.Text, width, s)]);
            case ReportText text:
                return new ReportRows([.. Lines(text.Text, width, s.NoteHeight, 0, false)]);
            case ReportTable table:
                var measured = new MeasuredTable(
                    new KeyTable(table.Title, table.Heads, [.. table.Rows.Select(r => (IReadOnlyList<Cell>)[.. r.Select(c => (Cell)c)])]),
                        s)
                    .At(width);
                List<BlockRow> rows =
                [
                    .. table.Title.Length > 0 ? Lines(table.Title, width, s.SubtitleHeight, 0, true) : [],
                    .. measured.Head is { } h ? [h] : Array.Empty<BlockRow>(),
                ];
                int before = rows.Count;
                return new ReportRows([.. rows, .. measured.Rows], measured.Head, before);
            case ReportWorking working:
                var f = working.Figure;
                return new ReportRows(
                [
                    .. Lines($"{WorkingWords.Name(f)} = {f.Text}", width, s.NoteHeight, 0, true),
                    .. Lines($"{f.Formula}", width, s.NoteHeight, Indent, false),
                    .. Lines("= " + f.Substituted, width, s.NoteHeight, Indent, false),
                    .. f.Inputs.SelectMany(i => Lines(WorkingWords.Of(i, plan), width, s.NoteHeight, 2 * Indent, false)),
                    .. Lines("by " + f.Source.Text, width, s.NoteHeight, 2 * Indent, false),
                ]);
            default:
                return new ReportRows([]);
        }
    }

    private static IEnumerable<BlockRow> Lines(string text, double width, double letters, double indent, bool bold)
        => TextWrap.Lines(SafeText.Clean(text, LongestText), width - indent, letters, bold).Select(line => new BlockRow(
            (letters * TextMeasure.LinePitch) + (LineGap / 2),
            (scene, at) => scene.Text(new TextItem(
                line, at + new PaperPoint(indent, letters * TextMeasure.Ascent), letters, TextAnchor.Start, Layers.Text, Bold: bold))));

    /// <summary>A bar stands beside every line.</summary>
    private static IEnumerable<BlockRow> Caution(string text, double width, DrawingStandard s) => Lines(text, width, s.NoteHeight, Indent,
        true)
        .Select(row => row with
        {
            Draw = (scene, at) =>
            {
                scene.Line(
                    at + new PaperPoint(1, 0), at + new PaperPoint(1, row.Height), new Pen(s.ExtraWide), Layers.Frame, null,
                        Band.Annotation);
                row.Draw(scene, at);
            },
        });
}
