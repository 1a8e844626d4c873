namespace Floorplan.Language.Diagnostics;

/// <summary>Names that look like a name that was not found: a slip of a few letters.</summary>
public static class NearNames
{
    private const int Most = 3;

    /// <summary>A piece of a name this long is taken for the name; own choice.</summary>
    private const int Part = 4;

    /// <summary>Names longer than this are not compared, so that cost stays bounded; own choice.</summary>
    private const int LongestCompared = 64;

    /// <summary>More names than this are not searched, so that a file full of unknown names stays fast; own choice.</summary>
    private const int MostSearched = 2000;

    /// <summary><c>did you mean `gutting`?</c>, or null when nothing is near.</summary>
    public static string? Hint(string wanted, IEnumerable<string> names)
    {
        var near = Find(wanted, names);
        return near.Count == 0 ? null : $"did you mean {Quoted(near)}?";
    }

    /// <summary>At most three, nearest first.</summary>
    public static IReadOnlyList<string> Find(string wanted, IEnumerable<string> names)
        => [.. names.Take(MostSearched)
            .Select(n => (
                Name: n,
                Far: Math.Min(Distance(wanted, n), wanted.Length >= Part
                    && n.Length <= LongestCompared
                    && n.Contains(wanted, StringComparison.OrdinalIgnoreCase) ? Allowed(wanted) : int.MaxValue)))
            .Where(p => p.Far <= Allowed(wanted))
            .OrderBy(p => p.Far)
            .ThenBy(p => p.Name, StringComparer.Ordinal)
            .Select(p => p.Name)
            .Distinct()
            .Take(Most)];

    /// <summary><c>`a`, `b` or `c`</c></summary>
    public static string Quoted(IReadOnlyList<string> names)
    {
        string[] quoted = [.. names.Select(n => $"`{n}`")];
        return quoted.Length == 1 ? quoted[0] : string.Join(", ", quoted[..^1]) + " or " + quoted[^1];
    }

    private static int Allowed(string wanted) => Math.Max(1, wanted.Length / 3);

    /// <summary>Edit distance, where two swapped letters count as one slip.</summary>
    private static int Distance(string a, string b)
    {
        if (a.Length > LongestCompared || b.Length > LongestCompared || Math.Abs(a.Length - b.Length) > Allowed(a))
        {
            return int.MaxValue;
        }

        var rows = new int[a.Length + 1, b.Length + 1];
        for (int i = 0; i <= a.Length; i++)
        {
            rows[i, 0] = i;
        }

        for (int k = 0; k <= b.Length; k++)
        {
            rows[0, k] = k;
        }

        for (int i = 1; i <= a.Length; i++)
        {
            for (int k = 1; k <= b.Length; k++)
            {
                int change = Same(a[i - 1], b[k - 1]) ? 0 : 1;
                int best = Math.Min(Math.Min(rows[i, k - 1], rows[i - 1, k]) + 1, rows[i - 1, k - 1] + change);
                bool swapped = i > 1 && k > 1 && Same(a[i - 1], b[k - 2]) && Same(a[i - 2], b[k - 1]);
                rows[i, k] = swapped ? Math.Min(best, rows[i - 2, k - 2] + 1) : best;
            }
        }

        return rows[a.Length, b.Length];
    }

    private static bool Same(char a, char b) => char.ToLowerInvariant(a) == char.ToLowerInvariant(b);
}
