using Floorplan.Cli.Output.Printing;
using Floorplan.Language.Diagnostics;

namespace Floorplan.Cli.Output.Reports;

/// <summary>A mistake in the text, for people.</summary>
internal static class MistakeText
{
    public static void Write(Page page, Diagnostic diagnostic)
    {
        var tone = diagnostic.Severity.Tone();
        page.Line(
            $"{DiagnosticText.Place(diagnostic.Span)}: ",
            new Piece(DiagnosticText.Word(diagnostic.Severity) + ": ", tone),
            diagnostic.Message,
            new Piece($" [{diagnostic.Code}]", Tone.Quiet));
        ExcerptLine.Write(page, diagnostic.Span, tone);
        foreach (var related in diagnostic.Related ?? [])
        {
            page.Line($"  {DiagnosticText.Place(related.Span)}: {related.Message}");
            ExcerptLine.Write(page, related.Span, Tone.Note);
        }

        if (diagnostic.Help is { Length: > 0 } help)
        {
            page.Line(new Piece("  mend: ", Tone.Good), help);
        }

        page.Gap();
    }
}
