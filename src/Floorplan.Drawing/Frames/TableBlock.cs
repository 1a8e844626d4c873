using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Frames;

/// <summary>A table as a block: columns as wide as their longest cell, the widest giving way first, cells wrapped.</summary>
internal static class TableBlock
{
    private const double Gap = 3;
    private const int MostLines = 3;
    private const double NarrowestColumn = 8;

    public static TextBlock Of(KeyTable table, double width, DrawingStandard s)
    {
        var rows = table.Rows.Select(r => r.Select(c => SafeText.Clean(c)).ToArray()).ToList();
        string[] heads = [.. table.Columns];
        double[] widths = Widths(heads, rows, width, s);
        return new TextBlock(table.Title, [.. rows.Select(r => Row(r, widths, s, bold: false))], Row(heads, widths, s, bold: true));
    }

    private static double[] Widths(string[] heads, List<string[]> rows, double width, DrawingStandard s)
    {
        double[] widths = [.. heads.Select((h, i) => Math.Max(TextMeasure.Width(h, s.NoteHeight, true), rows.Select(r => TextMeasure.Width(r[i], s.NoteHeight)).DefaultIfEmpty(0).Max()))];
        double room = width - (Gap * (heads.Length - 1));
        for (double over = widths.Sum() - room; over > 1e-6; over = widths.Sum() - room)
        {
            int widest = Array.IndexOf(widths, widths.Max());
            double next = widths.Where(w => w < widths[widest] - 1e-6).DefaultIfEmpty(NarrowestColumn).Max();
            double less = Math.Min(over, Math.Max(0.5, widths[widest] - next));
            if (widths[widest] - less < NarrowestColumn)
            {
                break;
            }

            widths[widest] -= less;
        }

        return widths;
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
