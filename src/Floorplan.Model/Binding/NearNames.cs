namespace Floorplan.Model.Binding;

/// <summary>Names that look like a name that was not found: a slip of one or two letters, or the same start.</summary>
internal static class NearNames
{
    private const int Most = 3;

    /// <summary>Names longer than this are compared by their start only, so that cost stays bounded; own choice.</summary>
    private const int LongestCompared = 64;

    /// <summary>More names than this are not searched, so that a file full of unknown names stays fast; own choice.</summary>
    private const int MostSearched = 2000;

    /// <summary><c>did you mean `gutting`?</c>, or null when nothing is near.</summary>
    public static string? Hint(string wanted, IEnumerable<string> names)
    {
        var near = Find(wanted, names);
        return near.Count == 0 ? null : $"did you mean {Joined(near)}?";
    }

    /// <summary>At most three, nearest first.</summary>
    public static IReadOnlyList<string> Find(string wanted, IEnumerable<string> names)
        => [.. names.Take(MostSearched)
            .Select(n => (Name: n, Far: Distance(wanted, n)))
            .Where(p => p.Far <= Allowed(wanted))
            .OrderBy(p => p.Far)
            .ThenBy(p => p.Name, StringComparer.Ordinal)
            .Take(Most)
            .Select(p => p.Name)];

    private static string Joined(IReadOnlyList<string> names)
    {
        string[] quoted = [.. names.Select(n => $"`{n}`")];
        return quoted.Length == 1 ? quoted[0] : string.Join(", ", quoted[..^1]) + " or " + quoted[^1];
    }

    private static int Allowed(string wanted) => Math.Max(1, wanted.Length / 3);

    private static int Distance(string a, string b)
    {
        if (a.Length > LongestCompared || b.Length > LongestCompared || Math.Abs(a.Length - b.Length) > Allowed(a))
        {
            return int.MaxValue;
        }

        var before = new int[b.Length + 1];
        var row = new int[b.Length + 1];
        for (int k = 0; k <= b.Length; k++)
        {
            before[k] = k;
        }

        for (int i = 1; i <= a.Length; i++)
        {
            row[0] = i;
            for (int k = 1; k <= b.Length; k++)
            {
                int change = char.ToLowerInvariant(a[i - 1]) == char.ToLowerInvariant(b[k - 1]) ? 0 : 1;
                row[k] = Math.Min(Math.Min(row[k - 1], before[k]) + 1, before[k - 1] + change);
            }

            (before, row) = (row, before);
        }

        return before[b.Length];
    }
}
