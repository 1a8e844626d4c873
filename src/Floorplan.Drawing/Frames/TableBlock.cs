using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Frames;

/// <summary>A table as a block: cells wrap between words, in columns no narrower than their longest word.</summary>
internal static class TableBlock
{
    private const double Gap = 3;
    private const int MostLines = 3;

    public static TextBlock Of(KeyTable table, double width, DrawingStandard s)
    {
        var rows = table.Rows.Select(r => r.Select(c => SafeText.Clean(c)).ToArray()).ToList();
        string[] heads = [.. table.Columns];
        double[] widths = Widths(heads, rows, width, s);
        return new TextBlock(table.Title, [.. rows.Select(r => Row(r, widths, s, bold: false))], Row(heads, widths, s, bold: true));
    }

    /// <summary>Every column gets its longest word; what is left goes to the columns that would still wrap.</summary>
    private static double[] Widths(string[] heads, List<string[]> rows, double width, DrawingStandard s)
    {
        double[] longest = [.. heads.Select((h, i) => rows.Select(r => TextMeasure.Width(r[i], s.NoteHeight)).Append(TextMeasure.Width(h, s.NoteHeight, true)).Max())];
        double[] words = [.. heads.Select((h, i) => rows.SelectMany(r => r[i].Split(' ')).Select(w => TextMeasure.Width(w, s.NoteHeight)).Concat(h.Split(' ').Select(w => TextMeasure.Width(w, s.NoteHeight, true))).Max() + 0.1)];
        double room = width - (Gap * (heads.Length - 1));
        if (words.Sum() > room)
        {
            return [.. words.Select(w => w * room / words.Sum())];
        }

        double[] wanted = [.. longest.Zip(words, (l, w) => l - w)];
        double share = Math.Min(1, (room - words.Sum()) / Math.Max(wanted.Sum(), 1e-6));
        return [.. words.Zip(wanted, (w, more) => w + (more * share))];
    }

    private static BlockRow Row(string[] cells, double[] widths, DrawingStandard s, bool bold)
    {
        var lines = cells.Select((c, i) => TextWrap.Lines(c, widths[i], s.NoteHeight, bold, MostLines)).ToArray();
        return new BlockRow(TextBlocks.Height(lines.Max(l => l.Count), s), (scene, at) =>
        {
            double x = at.X;
            for (int i = 0; i < cells.Length; i++)
            {
                for (int k = 0; k < lines[i].Count; k++)
                {
                    scene.Text(new TextItem(lines[i][k], new(x, at.Y + (s.NoteHeight * (1 + (k * TextMeasure.LinePitch)))), s.NoteHeight, TextAnchor.Start, Layers.Schedule, Bold: bold));
                }

                x += widths[i] + Gap;
            }
        });
    }
}
