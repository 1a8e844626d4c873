using Floorplan.Cli.Input;
using Floorplan.Language.Diagnostics;

namespace Floorplan.Cli.Output;

/// <summary>How many of each weight; mistakes of the text count with the findings.</summary>
internal sealed record Counts(int Errors, int Warnings, int Notes, int Accepted)
{
    public static Counts Of(Examination examination)
    {
        int Standing(Severity severity) => examination.Diagnostics.Count(d => d.Severity == severity)
            + examination.Findings.Count(f => f.Severity == severity && f.AcceptedBy is null);
        return new Counts(Standing(Severity.Error), Standing(Severity.Warning), Standing(Severity.Note), examination.Findings.Count(f => f.AcceptedBy is not null));
    }

    public static Counts operator +(Counts a, Counts b)
        => new(a.Errors + b.Errors, a.Warnings + b.Warnings, a.Notes + b.Notes, a.Accepted + b.Accepted);

    /// <summary><c>2 errors, 1 warning, 1 accepted</c>.</summary>
    public string Text
    {
        get
        {
            string[] parts = [.. Part(Errors, "error"), .. Part(Warnings, "warning"), .. Part(Notes, "note"), .. Accepted > 0 ? [$"{Accepted} accepted"] : Array.Empty<string>()];
            return parts.Length == 0 ? "nothing wrong found" : string.Join(", ", parts);
        }
    }

    public Tone Tone => (Errors, Warnings) switch
    {
        ( > 0, _) => Tone.Error,
        (_, > 0) => Tone.Warning,
        _ => Tone.Good,
    };

    private static string[] Part(int count, string word) => count switch
    {
        0 => [],
        1 => [$"1 {word}"],
        _ => [$"{count} {word}s"],
    };
}
