using Floorplan.Checks.Findings;
using Floorplan.Cli.Output.Printing;
using Floorplan.Language.Diagnostics;

namespace Floorplan.Cli.Output.Reports;

/// <summary>One finding, for people.</summary>
internal static class FindingText
{
    /// <param name="number">Its number on the sheets.</param>
    public static void Write(Page page, Finding finding, int number)
    {
        Line(page, finding, number);
        ExcerptLine.Write(page, finding.Span, ToneOf(finding));
        if (finding.Limit.Length > 0)
        {
            page.Line("  ", finding.Limit);
        }

        if (finding.AcceptedBy is { } accepted)
        {
            page.Line(new Piece("  accepted: ", Tone.Good), accepted.Reason, accepted.By.Length > 0
                ? $" ({accepted.By})"
                : "", $", {DiagnosticText.Place(accepted.Span)}");
        }
        else
        {
            page.Line(new Piece("  mend: ", Tone.Good), finding.Mend);
        }

        page.Gap();
    }

    /// <summary>The first line alone: place, severity, sentence, number on the sheets and rule.</summary>
    public static void Line(Page page, Finding finding, int number) => page.Line(
        $"{DiagnosticText.Place(finding.Span)}: ",
        new Piece(finding.SeverityWord + ": ", ToneOf(finding)),
        finding.Message,
        new Piece($" [{number} {finding.Rule}]", Tone.Quiet));

    private static Tone ToneOf(Finding finding) => finding.AcceptedBy is null ? finding.Severity.Tone() : Tone.Quiet;
}
