namespace Floorplan.Cli.Output.Printing;

/// <summary>A table of a few columns: the first to the left, the others to the right where they are numbers.</summary>
internal sealed class TextColumns(params string[] heads)
{
    private readonly List<string[]> rows = [];

    /// <summary>All columns hold words and stand to the left.</summary>
    public bool Words { get; init; }

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

    private string Row(string[] cells, int[] widths)
        => string.Join("  ", cells.Select((c, i) => i == 0 || Words ? c.PadRight(widths[i]) : c.PadLeft(widths[i]))).TrimEnd();
}
