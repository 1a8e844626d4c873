using Floorplan.Language.Diagnostics;

namespace Floorplan.Cli.Output;

/// <summary>A mistake in the text, for people.</summary>
internal static class DiagnosticText
{
    public static void Write(Page page, Diagnostic diagnostic)
    {
        var tone = diagnostic.Severity.Tone();
        page.Line(
            $"{Excerpt.Place(diagnostic.Span)}: ",
            new Piece(diagnostic.Severity.Word() + ": ", tone),
            diagnostic.Message,
            new Piece($" [{diagnostic.Code}]", Tone.Quiet));
        Excerpt.Write(page, diagnostic.Span, tone);
        foreach (var related in diagnostic.Related ?? [])
        {
            page.Line($"  {Excerpt.Place(related.Span)}: {related.Message}");
            Excerpt.Write(page, related.Span, Tone.Note);
        }

        if (diagnostic.Help is { Length: > 0 } help)
        {
            page.Line(new Piece("  mend: ", Tone.Good), help);
        }

        page.Gap();
    }
}
