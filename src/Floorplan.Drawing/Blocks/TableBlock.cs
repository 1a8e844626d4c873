using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Blocks;

/// <summary>A table as a block: cells wrap between words, in columns no narrower than their longest word.</summary>
internal static class TableBlock
{
    private const double Gap = 3;

    /// <summary>Between columns that would otherwise part a figure from its unit.</summary>
    private const double TightGap = 2;

    /// <summary>A word that takes more of the table than this is broken.</summary>
    private const double WidestWord = 0.45;

    /// <summary>The share of lines below which a table is much shorter; own choice.</summary>
    private const double MuchShorter = 0.85;

    /// <summary>Keeps a word whole that is exactly as wide as its column.</summary>
    private const double WordSlack = 0.1;

    public static TextBlock Of(KeyTable table, double width, DrawingStandard s)
    {
        var rows = table.Rows.Select(r => r.Select(c => SafeText.Clean(c.Text, LongRows.Longest)).ToArray()).ToList();
        string[] heads = [.. table.Columns];
        var columns = Share(heads, [.. rows.Where(r => r.Length > 1)], width, s);
        return new TextBlock(table.Title, [.. Rows(rows, columns, width, s)], Row(heads, columns, s, bold: true).Single())
        {
            IsTight = columns.IsTight,
        };
    }

    /// <summary>A row of one cell heads the rows below it, and is never left alone at the foot of a column.</summary>
    private static IEnumerable<BlockRow> Rows(List<string[]> rows, TableColumns columns, double width, DrawingStandard s)
    {
        for (int i = 0; i < rows.Count; i++)
        {
            if (rows[i].Length > 1 || i + 1 == rows.Count || rows[i + 1].Length == 1)
            {
                foreach (var row in Row(rows[i], Columns(rows[i]), s, bold: rows[i].Length == 1))
                {
                    yield return row;
                }

                continue;
            }

            var head = Row(rows[i], Columns(rows[i]), s, bold: true).First();
            foreach (var (index, below) in Row(rows[++i], columns, s, bold: false).Index())
            {
                yield return index > 0 ? below : new BlockRow(head.Height + below.Height, (scene, at) =>
                {
                    head.Draw(scene, at);
                    below.Draw(scene, at + new PaperPoint(0, head.Height));
                });
            }
        }

        TableColumns Columns(string[] row) => row.Length == 1 ? new TableColumns([width], 0) : columns;
    }

    /// <summary>
    /// Every column gets its longest figure with its unit, or at least its longest word; what is left goes to the columns that would
    /// still wrap, those first that need least. Where a column of long texts would then be much longer than need be, it is shared out
    /// to make the table short instead. Where not even the words find room, only the columns with the longest ones give way.
    /// </summary>
    private static TableColumns Share(string[] heads, List<string[]> rows, double width, DrawingStandard s)
    {
        double room = width - (Gap * (heads.Length - 1));
        double tight = width - (TightGap * (heads.Length - 1));
        double[][] cells = [.. rows.Select(r => r.Select(c => TextMeasure.Width(c, s.NoteHeight)).ToArray())];
        double[] longest =
            [.. heads.Select((h, i) => Math.Max(TextMeasure.Width(h, s.NoteHeight, true), cells.Select(c => c[i]).DefaultIfEmpty(0).Max())
                + WordSlack)];
        if (longest.Sum() <= room)
        {
            return new TableColumns(longest, Gap);
        }

        double[] words =
            [.. heads.Select(
                (h, i) => Math.Min(room * WidestWord, Widest(h.Split(' '), s, rows.SelectMany(r => TextWrap.Pieces(r[i]))) + WordSlack))];
        double[] figures =
            [.. words.Select(
                (w, i) => Math.Max(
                    w, rows.SelectMany(r => Figures(r[i])).Select(f => TextMeasure.Width(f, s.NoteHeight) + WordSlack).DefaultIfEmpty(0)
                        .Max()))];
        if (figures.Sum() > room)
        {
            return figures.Sum() <= tight
                ? new TableColumns(figures, TightGap)
                : new TableColumns(ColumnShares.Capped(words, tight), TightGap, IsTight: true);
        }

        double left = room - figures.Sum();
        double[] widths = [.. figures];
        foreach (int column in Enumerable.Range(0, heads.Length).OrderBy(i => longest[i] - figures[i]))
        {
            double more = Math.Clamp(longest[column] - figures[column], 0, left);
            widths[column] += more;
            left -= more;
        }

        double[] even = ColumnShares.Short(figures, room, cells);
        return new TableColumns(ColumnShares.Lines(cells, even) < MuchShorter * ColumnShares.Lines(cells, widths) ? even : widths, Gap);
    }

    /// <summary>Numbers with the unit after them: <c>1.33 m</c>.</summary>
    private static IEnumerable<string> Figures(string text)
    {
        const int longestUnit = 5;
        string[] words = text.Split(' ');
        return words.Zip(words.Skip(1))
            .Where(p => p.First.Length > 0 && char.IsDigit(p.First[0]) && p.Second.TrimEnd(',').Length <= longestUnit)
                .Select(p => p.First + " " + p.Second);
    }

    private static double Widest(IEnumerable<string> heads, DrawingStandard s, IEnumerable<string> cells) =>
        heads.Select(h => TextMeasure.Width(h, s.NoteHeight, true)).Concat(cells.Select(c => TextMeasure.Width(c, s.NoteHeight))).Max();

    private static IEnumerable<BlockRow> Row(string[] cells, TableColumns columns, DrawingStandard s, bool bold)
    {
        var lines = cells.Select((c, i) => TextWrap.Lines(c, columns.Widths[i], s.NoteHeight, bold)).ToArray();
        return LongRows.Pieces(lines.Max(l => l.Count)).Select(piece =>
        {
            var parts = lines.Select(l => LongRows.Of(l, piece)).ToArray();
            return new BlockRow(TextBlocks.Height(parts.Max(l => l.Count), s), (scene, at) =>
            {
                double x = at.X;
                for (int i = 0; i < parts.Length; i++)
                {
                    TextBlocks.Lines(scene, parts[i], new(x, at.Y), s, Layers.Schedule, bold);
                    x += columns.Widths[i] + columns.Gap;
                }
            })
            {
                Used = columns.Widths.Sum() + (columns.Gap * (columns.Widths.Length - 1)),
            };
        });
    }

    /// <param name="Gap">Between two columns.</param>
    /// <param name="IsTight">Not even the words find room.</param>
    private sealed record TableColumns(double[] Widths, double Gap, bool IsTight = false);
}
