using Floorplan.Cli.Output.Printing;

namespace Floorplan.Cli.Output.Days;

/// <summary>A table of a few columns: the first to the left, the others to the right.</summary>
internal sealed class TextColumns(params string[] heads)
{
    private readonly List<string[]> rows = [];

    public void Add(params string[] cells) => rows.Add(cells);

    public void Print(Page page)
    {
        if (rows.Count == 0)
        {
            return;
        }

        int[] widths = [.. heads.Select((h, i) => Math.Max(h.Length, rows.Max(r => r[i].Length)))];
        page.Line(new Piece(Row(heads, widths), Tone.Strong));
        rows.ForEach(r => page.Line(Row(r, widths)));
        page.Gap();
    }

    private static string Row(string[] cells, int[] widths)
        => string.Join("  ", cells.Select((c, i) => i == 0 ? c.PadRight(widths[i]) : c.PadLeft(widths[i]))).TrimEnd();
}
