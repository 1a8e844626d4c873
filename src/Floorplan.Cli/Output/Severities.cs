using Floorplan.Language.Diagnostics;

namespace Floorplan.Cli.Output;

internal static class Severities
{
    public static Tone Tone(this Severity severity) => severity switch
    {
        Severity.Error => Output.Tone.Error,
        Severity.Warning => Output.Tone.Warning,
        _ => Output.Tone.Note,
    };
}
