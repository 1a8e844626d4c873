namespace Floorplan.Checks.Framework;

/// <summary>
/// One change of a rule's bad example on the way to the good one. A line of the bad plan is named by how it starts, after its
/// indentation; no other line of that plan may start so.
/// </summary>
public sealed record LineChange
{
    private readonly bool takesOut;

    /// <summary>The line that starts so becomes another, given whole.</summary>
    public LineChange(string start, string becomes)
        : this(start, true, [becomes])
    {
    }

    private LineChange(string start, bool takesOut, IReadOnlyList<string> brings)
    {
        Start = start;
        Brings = brings;
        this.takesOut = takesOut;
    }

    public string Start { get; }

    /// <summary>The lines that come in its place, or after it.</summary>
    public IReadOnlyList<string> Brings { get; }

    /// <summary>The line stays, and these come after it.</summary>
    public static LineChange After(string start, params IReadOnlyList<string> lines) => new(start, false, lines);

    /// <summary>The line is taken out.</summary>
    public static LineChange Without(string start) => new(start, true, []);

    /// <summary>The plan with all changes made.</summary>
    public static string Apply(string plan, IReadOnlyList<LineChange> changes)
    {
        var lines = plan.Split('\n').Select(l => new List<string> { l }).ToList();
        foreach (var change in changes)
        {
            var line = lines[change.IndexIn(plan)];
            if (change.takesOut)
            {
                line.RemoveAt(0);
            }

            line.AddRange(change.Brings);
        }

        return string.Join('\n', lines.SelectMany(l => l));
    }

    /// <summary>The line of the bad plan that goes; null when none does.</summary>
    public string? TakenFrom(string plan) => takesOut ? plan.Split('\n')[IndexIn(plan)] : null;

    private int IndexIn(string plan)
    {
        int[] found =
            [.. plan.Split('\n').Index().Where(l => l.Item.TrimStart().StartsWith(Start, StringComparison.Ordinal)).Select(l => l.Index)];
        return found.Length == 1
            ? found[0]
            : throw new InvalidOperationException($"{found.Length} lines of this example start with `{Start}`, and one should");
    }
}
