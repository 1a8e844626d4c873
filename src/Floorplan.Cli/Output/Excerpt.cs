using Floorplan.Language.Diagnostics;
using Floorplan.Language.Text;

namespace Floorplan.Cli.Output;

/// <summary>The line of a plan that something is said about, with the place underlined in the colour of its weight.</summary>
internal static class Excerpt
{
    public static void Write(Page page, SourceSpan span, Tone tone)
    {
        string[] lines = DiagnosticText.Underlined(span).Split('\n');
        int carets = lines[1].IndexOf('^', StringComparison.Ordinal);
        page.Line(lines[0]);
        page.Line(lines[1][..carets], new Piece(lines[1][carets..], tone));
    }
}
