namespace Floorplan.Cli.Output.Printing;

/// <summary>For pipes and files: the same text whatever the terminal.</summary>
internal sealed class PlainPage(TextWriter writer) : Page
{
    public override void Line(params ReadOnlySpan<Piece> pieces)
    {
        foreach (var piece in pieces)
        {
            writer.Write(VisibleText.Of(piece.Text));
        }

        writer.WriteLine();
    }

    public override void Prose(string text) => Line(text);

    public override void Rows(IReadOnlyList<(string Name, string Meaning)> rows)
    {
        int width = rows.Count == 0 ? 0 : rows.Max(r => r.Name.Length);
        foreach (var (name, meaning) in rows)
        {
            Line("  ", name.PadRight(width), "  ", meaning);
        }
    }
}
