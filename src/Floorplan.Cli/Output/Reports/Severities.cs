using Floorplan.Cli.Output.Printing;
using Floorplan.Language.Diagnostics;

namespace Floorplan.Cli.Output.Reports;

internal static class Severities
{
    public static Tone Tone(this Severity severity) => severity switch
    {
        Severity.Error => Printing.Tone.Error,
        Severity.Warning => Printing.Tone.Warning,
        _ => Printing.Tone.Note,
    };
}
