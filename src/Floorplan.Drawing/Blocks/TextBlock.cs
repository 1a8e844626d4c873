using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Blocks;

/// <summary>A titled part of the text space, in rows that stay whole; between rows it may go on in the next column.</summary>
internal sealed record TextBlock(string Title, IReadOnlyList<BlockRow> Rows, BlockRow? Head = null)
{
    /// <summary>A table whose words or figures are broken, because the column is too narrow for it.</summary>
    public bool IsTight { get; init; }

    /// <summary>Of a table, how many rows have a short text on three lines or more.</summary>
    public int Broken { get; init; }
}

/// <param name="Height">Paper mm.</param>
/// <param name="Draw">Draws with the top left corner given.</param>
internal sealed record BlockRow(double Height, Action<SceneBuilder, PaperPoint> Draw)
{
    /// <summary>How much of the column's width has something on it; the whole of it where nothing else is said.</summary>
    public double Used { get; init; } = double.PositiveInfinity;
}

/// <summary>Makes blocks of what a sheet says, for columns of one width.</summary>
internal static class TextBlocks
{
    private const double RowGap = 1.4;
    private const double SampleWidth = 14;
    private const double SampleHeight = 5;
    private const double LegendGap = 3;
    private const double SignHeight = 2.5;

    /// <summary>What is needed to read the view comes first, then what must be known before work, then lists.</summary>
    public static IEnumerable<TextBlock> Of(
        SheetContent content, IReadOnlyList<MeasuredTable> tables, double width, DrawingStandard s)
    {
        if (content.Legend.Count > 0)
        {
            yield return new TextBlock("Legend", [.. LegendRows(content.Legend, width, s)]);
        }

        if (content.Findings.Count > 0)
        {
            yield return new TextBlock("Findings", [.. content.Findings.SelectMany(f => Finding(f, width, s))]);
        }

        if (content.Cautions.Count > 0)
        {
            yield return new TextBlock("Caution", [.. content.Cautions.SelectMany(c => Caution(c, width, s))]);
        }

        foreach (var table in tables)
        {
            yield return table.At(width);
        }

        if (content.Notes.Count > 0)
        {
            yield return new TextBlock(
                "Notes", [.. content.Notes.SelectMany((n, i) => Numbered(FormattableString.Invariant($"{i + 1}"), n, width, s))]);
        }
    }

    public static KeyTable Revisions(SheetContent content) => new(
        "Revisions", ["Rev", "Date", "What changed"],
        [.. content.Revisions.Select(r => (IReadOnlyList<Cell>)[r.Mark, r.Date, r.Text])]);

    private static IEnumerable<BlockRow> Finding(FindingLine finding, double width, DrawingStandard s)
    {
        // Numbers have room for two figures, and more where a plan has hundreds of findings.
        string number = FormattableString.Invariant($"{finding.Number}");
        double mark = Math.Max(7, TextMeasure.Width(number, s.NoteHeight, true) + 2);
        var lines = TextWrap.Lines(SafeText.Clean($"{finding.Severity}: {finding.Text}", LongRows.Longest), width - mark, s.NoteHeight);
        return Marked(lines, mark, s, Layers.Finding, (scene, at) =>
            scene.Text(
                new TextItem(number, at + new PaperPoint(0, s.NoteHeight), s.NoteHeight, TextAnchor.Start, Layers.Finding, Bold: true)));
    }

    /// <summary>Lines beside a mark, which stands at the first of them.</summary>
    private static IEnumerable<BlockRow> Marked(
        IReadOnlyList<string> lines, double indent, DrawingStandard s, string layer, Action<SceneBuilder, PaperPoint> mark)
        => LongRows.Pieces(lines.Count).Select(piece =>
        {
            var part = LongRows.Of(lines, piece);
            return new BlockRow(Height(part.Count, s), (scene, at) =>
            {
                if (piece.Start.Value == 0)
                {
                    mark(scene, at);
                }

                Lines(scene, part, at + new PaperPoint(indent, 0), s, layer);
            })
            {
                Used = indent + part.Select(l => TextMeasure.Width(l, s.NoteHeight)).DefaultIfEmpty(0).Max(),
            };
        });

    /// <summary>Two short entries share a row.</summary>
    private static IEnumerable<BlockRow> LegendRows(IReadOnlyList<LegendEntry> entries, double width, DrawingStandard s)
    {
        double half = (width - LegendGap) / 2;
        bool IsShort(LegendEntry entry) => SampleWidth + 3 + TextMeasure.Width(SafeText.Clean(entry.Text), s.NoteHeight) <= half;
        for (int i = 0; i < entries.Count; i++)
        {
            if (i + 1 < entries.Count && IsShort(entries[i]) && IsShort(entries[i + 1]))
            {
                var left = Legend(entries[i], half, s);
                var right = Legend(entries[++i], half, s);
                yield return new BlockRow(Math.Max(left.Height, right.Height), (scene, at) =>
                {
                    left.Draw(scene, at);
                    right.Draw(scene, at + new PaperPoint(half + LegendGap, 0));
                });
            }
            else
            {
                yield return Legend(entries[i], width, s);
            }
        }
    }

    private static BlockRow Legend(LegendEntry entry, double width, DrawingStandard s)
    {
        var lines = TextWrap.Lines(SafeText.Clean(entry.Text), width - SampleWidth - 3, s.NoteHeight);
        double height = Math.Max(SampleHeight + RowGap, Height(lines.Count, s));
        return new BlockRow(height, (scene, at) =>
        {
            entry.Draw(scene, PaperBox.At(at, SampleWidth, SampleHeight));
            double down = Math.Max(0, (SampleHeight - TextMeasure.BlockHeight(lines.Count, s.NoteHeight)) / 2);
            Lines(scene, lines, at + new PaperPoint(SampleWidth + 3, down), s, Layers.Legend);
        })
        {
            Used = SampleWidth + 3 + lines.Select(l => TextMeasure.Width(l, s.NoteHeight)).DefaultIfEmpty(0).Max(),
        };
    }

    private static IEnumerable<BlockRow> Numbered(string number, string text, double width, DrawingStandard s)
    {
        double indent = Math.Max(6, TextMeasure.Width(number, s.NoteHeight) + 2);
        return Marked(
            TextWrap.Lines(SafeText.Clean(text, LongRows.Longest), width - indent, s.NoteHeight), indent, s, Layers.Legend,
            (scene, at) => scene.Text(
                new TextItem(number, at + new PaperPoint(0, s.NoteHeight), s.NoteHeight, TextAnchor.Start, Layers.Legend)));
    }

    private static IEnumerable<BlockRow> Caution(string text, double width, DrawingStandard s)
    {
        const double indent = 7;
        var lines = TextWrap.Lines(SafeText.Clean(text, LongRows.Longest), width - indent, s.NoteHeight);
        return Marked(lines, indent, s, Layers.Legend, (scene, at) => CautionSign(scene, at, s))
            .Select(r => r with { Height = Math.Max(6, r.Height) });
    }

    private static void CautionSign(SceneBuilder scene, PaperPoint at, DrawingStandard s)
    {
        PaperPoint[] triangle = [at + new PaperPoint(0, 4.5), at + new PaperPoint(2.6, 0), at + new PaperPoint(5.2, 4.5)];
        scene.Fill([triangle], SafetyColours.Yellow, Layers.SafetySign, "caution", Band.Annotation);
        scene.Polyline(triangle, true, new Pen(s.Narrow), Layers.SafetySign, "caution", Band.Annotation);
        scene.Text(
            new TextItem("!", at + new PaperPoint(2.6, 4.1), SignHeight, TextAnchor.Middle, Layers.SafetySign, "caution", Bold: true));
    }

    public static void Lines(
        SceneBuilder scene, IReadOnlyList<string> lines, PaperPoint at, DrawingStandard s, string layer, bool bold = false)
    {
        for (int i = 0; i < lines.Count; i++)
        {
            scene.Text(
                new TextItem(
                    lines[i], at + new PaperPoint(0, s.NoteHeight * (1 + (i * TextMeasure.LinePitch))), s.NoteHeight, TextAnchor.Start,
                    layer, Bold: bold));
        }
    }

    public static double Height(int lines, DrawingStandard s) => TextMeasure.BlockHeight(Math.Max(1, lines), s.NoteHeight) + RowGap;
}
