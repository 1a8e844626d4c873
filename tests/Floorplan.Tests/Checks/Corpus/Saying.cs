using Floorplan.Checks.Findings;

namespace Floorplan.Tests.Checks.Corpus;

/// <summary>What is told of a plan: one of some rules, of a thing or with a word of its sentence.</summary>
internal sealed record Saying(IReadOnlyList<string> Rules, string? Who)
{
    public static bool IsOne(string line) => line.StartsWith("must ", StringComparison.Ordinal)
        || line.StartsWith("not ", StringComparison.Ordinal);

    public static IReadOnlyList<Saying> Of(IEnumerable<string> lines, string word)
        => [.. lines.Where(l => l.StartsWith(word, StringComparison.Ordinal)).Select(l => Parse(l[word.Length..]))];

    /// <summary>The right rule, at the right thing.</summary>
    public bool Fits(Finding finding) => Names(finding)
        && (Who is null || finding.Things.Contains(Who) || finding.Message.Contains(Who, StringComparison.OrdinalIgnoreCase));

    /// <summary>The right rule, of whatever thing.</summary>
    public bool Names(Finding finding) => Rules.Contains(finding.Rule);

    private static Saying Parse(string said)
    {
        string[] parts = said.Split(' ', 2);
        return new Saying(parts[0].Split('|'), parts.Length > 1 ? parts[1] : null);
    }
}
