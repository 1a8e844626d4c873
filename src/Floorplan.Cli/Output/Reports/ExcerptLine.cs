using Floorplan.Cli.Output.Printing;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Text;

namespace Floorplan.Cli.Output.Reports;

/// <summary>The line of a plan that something is said about, with the place in the colour of its severity.</summary>
internal static class ExcerptLine
{
    public static void Write(Page page, SourceSpan span, Tone tone)
    {
        var excerpt = Excerpt.Of(span);
        page.Line(excerpt.Before, new Piece(excerpt.Place, tone), excerpt.After);
    }
}
