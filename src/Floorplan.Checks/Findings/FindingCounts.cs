using Floorplan.Language.Diagnostics;

namespace Floorplan.Checks.Findings;

/// <summary>How many findings of each weight stand, and how many are accepted.</summary>
public sealed record FindingCounts(int Errors, int Warnings, int Notes, int Accepted)
{
    public static FindingCounts None { get; } = new(0, 0, 0, 0);

    public static FindingCounts Of(IReadOnlyCollection<Finding> findings)
    {
        int Standing(Severity severity) => findings.Count(f => f.AcceptedBy is null && f.Severity == severity);
        return new FindingCounts(
            Standing(Severity.Error), Standing(Severity.Warning), Standing(Severity.Note), findings.Count(f => f.AcceptedBy is not null));
    }

    public static FindingCounts operator +(FindingCounts a, FindingCounts b)
        => new(a.Errors + b.Errors, a.Warnings + b.Warnings, a.Notes + b.Notes, a.Accepted + b.Accepted);

    /// <summary><c>1 error</c>, <c>2 errors</c>.</summary>
    public static string Words(int count, string word) => FormattableString.Invariant($"{count} {word}{(count == 1 ? "" : "s")}");

    /// <summary><c>2 errors, 1 note, 1 accepted</c>.</summary>
    /// <param name="none">What is said when there is nothing at all.</param>
    public string Text(string none)
    {
        List<string> parts = [];
        AddStanding(Errors, "error");
        AddStanding(Warnings, "warning");
        AddStanding(Notes, "note");
        if (Accepted > 0)
        {
            parts.Add(FormattableString.Invariant($"{Accepted} accepted"));
        }

        return parts.Count == 0 ? none : string.Join(", ", parts);

        void AddStanding(int count, string word)
        {
            if (count > 0)
            {
                parts.Add(Words(count, word));
            }
        }
    }
}
