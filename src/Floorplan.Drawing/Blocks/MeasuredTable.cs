using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Blocks;

/// <summary>
/// A table with the lengths of its texts at one height of letters, so that it can be set in columns of many widths: cells wrap between
/// words, in columns no narrower than their longest word.
/// </summary>
internal sealed class MeasuredTable
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

    /// <summary>Letters of a text that a reader takes in at one look; own choice.</summary>
    private const int ShortText = 32;

    /// <summary>Lines of a longer text; own choice.</summary>
    private const int MostLines = 6;

    private readonly DrawingStandard standard;
    private readonly string title;
    private readonly string[] heads;
    private readonly List<string[]> rows;

    /// <summary>Of every text, row by row; rows of one cell are not counted.</summary>
    private readonly double[][] cells;

    /// <summary>The same with nothing for each row of one cell.</summary>
    private readonly double[]?[] lengths;

    /// <summary>Of the longest text, word, and figure with its unit of each column.</summary>
    private readonly double[] longest;
    private readonly Lazy<(double[] Words, double[] Figures)> parts;

    /// <summary>With every text in one line, which is the same at any width.</summary>
    private TextBlock? unbroken;

    public MeasuredTable(KeyTable table, DrawingStandard standard)
    {
        this.standard = standard;
        title = table.Title;
        string[][] texts = [.. table.Rows.Select(r => r.Select(c => SafeText.Clean(c.Text, LongRows.Longest)).ToArray())];

        // A column without a word in any row says nothing.
        int[] used = [.. Enumerable.Range(0, table.Columns.Count).Where(i => texts.Any(r => r.Length > 1 && r[i].Length > 0))];
        int[] shown = used.Length > 0 ? used : [.. Enumerable.Range(0, table.Columns.Count)];
        heads = [.. shown.Select(i => table.Columns[i])];
        rows = [.. texts.Select(r => r.Length > 1 ? [.. shown.Select(i => r[i])] : r)];
        string[][] full = [.. rows.Where(r => r.Length > 1)];
        lengths = [.. rows.Select(r => r.Length > 1 ? r.Select(c => Width(c)).ToArray() : null)];
        cells = [.. lengths.OfType<double[]>()];
        longest = [.. heads.Select((h, i) => Math.Max(Width(h, true), cells.Select(c => c[i]).DefaultIfEmpty(0).Max()) + WordSlack)];
        parts = new(() => (
            [
                .. heads.Select((h, i) => Widest(h.Split(' ').Select(w => Width(w, true)), full.SelectMany(r => TextWrap.Pieces(r[i])))),
            ],
            [.. heads.Select((h, i) => Widest([InTwoLines(h)], full.SelectMany(r => Figures(r[i]))))]));

        double Widest(IEnumerable<double> known, IEnumerable<string> texts) => known.Concat(texts.Select(t => Width(t))).Max() + WordSlack;
    }

    public TextBlock At(double width)
    {
        var columns = Share(width);
        if (columns.Widths != longest)
        {
            return Block(columns, width);
        }

        return cells.Length < rows.Count ? Block(columns, width) : unbroken ??= Block(columns, width);
    }

    private TextBlock Block(TableColumns columns, double width)
    {
        IReadOnlyList<string>[][] lines =
            [.. rows.Select((r, i) => Wrapped(r, lengths[i], r.Length == 1 ? [width] : columns.Widths, bold: r.Length == 1))];
        return new TextBlock(
            title, [.. Rows(lines, columns, width)], Row(Wrapped(heads, null, columns.Widths, bold: true), columns, bold: true).Single())
        {
            IsTight = columns.IsTight,
            Broken = columns.Widths.Sum() < longest.Sum()
                ? Enumerable.Range(0, rows.Count).Count(i => rows[i].Length > 1 && IsBroken(rows[i], lines[i])) : 0,
        };
    }

    /// <summary>A row of one cell heads the rows below it, and is never left alone at the foot of a column.</summary>
    private IEnumerable<BlockRow> Rows(IReadOnlyList<string>[][] lines, TableColumns columns, double width)
    {
        for (int i = 0; i < rows.Count; i++)
        {
            if (rows[i].Length > 1 || i + 1 == rows.Count || rows[i + 1].Length == 1)
            {
                foreach (var row in Row(lines[i], Columns(rows[i]), bold: rows[i].Length == 1))
                {
                    yield return row;
                }

                continue;
            }

            var head = Row(lines[i], Columns(rows[i]), bold: true).First();
            foreach (var (index, below) in Row(lines[++i], columns, bold: false).Index())
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
    private TableColumns Share(double width)
    {
        double room = width - (Gap * (heads.Length - 1));
        double tight = width - (TightGap * (heads.Length - 1));
        if (longest.Sum() <= room)
        {
            return new TableColumns(longest, Gap);
        }

        double[] words = [.. parts.Value.Words.Select(w => Math.Min((room * WidestWord) + WordSlack, w))];
        double[] figures = [.. words.Zip(parts.Value.Figures, Math.Max)];
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

    /// <summary>A short text on three lines or more is read word by word, and a long one in a narrow column is a ribbon.</summary>
    private static bool IsBroken(string[] row, IReadOnlyList<string>[] lines)
        => row.Where((text, i) => lines[i].Count > (text.Length <= ShortText ? 2 : MostLines)).Any();

    /// <summary>The width of a head that is set in two lines.</summary>
    private double InTwoLines(string head)
    {
        string[] words = head.Split(' ');
        return Enumerable.Range(1, words.Length)
            .Min(i => Math.Max(Width(string.Join(' ', words[..i]), true), Width(string.Join(' ', words[i..]), true)));
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

    private double Width(string text, bool bold = false) => TextMeasure.Width(text, standard.NoteHeight, bold);

    /// <param name="lengths">Of the texts, where they are known.</param>
    private IReadOnlyList<string>[] Wrapped(string[] texts, double[]? lengths, double[] widths, bool bold)
        => [.. texts.Select((t, i) => lengths is not null && t.Length > 0 && lengths[i] <= widths[i]
            ? [t.TrimEnd()] : TextWrap.Lines(t, widths[i], standard.NoteHeight, bold))];

    private IEnumerable<BlockRow> Row(IReadOnlyList<string>[] lines, TableColumns columns, bool bold)
    {
        double used = columns.Widths.Sum() + (columns.Gap * (columns.Widths.Length - 1));
        return LongRows.Pieces(lines.Max(l => l.Count)).Select(piece =>
        {
            var parts = lines.Select(l => LongRows.Of(l, piece)).ToArray();
            return new BlockRow(TextBlocks.Height(parts.Max(l => l.Count), standard), (scene, at) =>
            {
                double x = at.X;
                for (int i = 0; i < parts.Length; i++)
                {
                    TextBlocks.Lines(scene, parts[i], new(x, at.Y), standard, Layers.Schedule, bold);
                    x += columns.Widths[i] + columns.Gap;
                }
            })
            {
                Used = used,
            };
        });
    }

    /// <param name="Gap">Between two columns.</param>
    /// <param name="IsTight">Not even the words find room.</param>
    private sealed record TableColumns(double[] Widths, double Gap, bool IsTight = false);
}
