using Floorplan.Checks.Findings;
using Floorplan.Cli.Input;
using Floorplan.Cli.Output.Printing;
using Floorplan.Language.Diagnostics;

namespace Floorplan.Cli.Output.Reports;

/// <summary>Counts of a whole report: mistakes of the text count with the findings.</summary>
internal static class Counts
{
    public static FindingCounts Of(Examination examination)
    {
        int Mistakes(Severity severity) => examination.Diagnostics.Count(d => d.Severity == severity);
        return FindingCounts.Of(examination.Findings)
            + new FindingCounts(Mistakes(Severity.Error), Mistakes(Severity.Warning), Mistakes(Severity.Note), 0);
    }

    public static string Text(this FindingCounts counts) => counts.Text("nothing wrong found");

    public static Tone Tone(this FindingCounts counts) => (counts.Errors, counts.Warnings) switch
    {
        ( > 0, _) => Printing.Tone.Error,
        (_, > 0) => Printing.Tone.Warning,
        _ => Printing.Tone.Good,
    };
}
