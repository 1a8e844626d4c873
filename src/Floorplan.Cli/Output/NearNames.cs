namespace Floorplan.Cli.Output;

/// <summary>Names that a person may have meant.</summary>
internal static class NearNames
{
    private const int Most = 3;

    /// <summary><c>did you mean overlap or headroom?</c>, or null when nothing is near.</summary>
    public static string? Sentence(string written, IEnumerable<string> known)
    {
        string[] near = Find(written, known);
        return near.Length switch
        {
            0 => null,
            1 => $"did you mean {near[0]}?",
            _ => $"did you mean {string.Join(", ", near[..^1])} or {near[^1]}?",
        };
    }

    /// <summary>Within a third of the name's length in edits, or starting alike; nearest first.</summary>
    private static string[] Find(string written, IEnumerable<string> known)
    {
        if (written.Length is 0 or > 100)
        {
            return [];
        }

        return [.. known
            .Select(name => (Name: name, Edits: Edits(written, name)))
            .Where(n => n.Edits <= Math.Max(1, n.Name.Length / 3) || (written.Length > 2 && n.Name.Contains(written, StringComparison.OrdinalIgnoreCase)))
            .OrderBy(n => n.Edits)
            .ThenBy(n => n.Name, StringComparer.Ordinal)
            .Take(Most)
            .Select(n => n.Name)];
    }

    /// <summary>Insertions, deletions, substitutions (Levenshtein 1966).</summary>
    private static int Edits(string a, string b)
    {
        int[] row = [.. Enumerable.Range(0, b.Length + 1)];
        for (int i = 1; i <= a.Length; i++)
        {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.Length; j++)
            {
                int substituted = diagonal + (char.ToLowerInvariant(a[i - 1]) == char.ToLowerInvariant(b[j - 1]) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(substituted, Math.Min(row[j], row[j - 1]) + 1);
            }
        }

        return row[b.Length];
    }
}
