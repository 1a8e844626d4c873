namespace Floorplan.Checks.Framework;

/// <summary>One mistake gives one finding: repeats go, and so does a finding that a stronger rule already explains.</summary>
internal static class OncePerMistake
{
    public static IReadOnlyList<Finding> Keep(IReadOnlyList<Finding> found, IReadOnlyList<Rule> rules)
    {
        var givesWay = rules.ToDictionary(r => r.Name, r => r.GivesWayTo);
        var byThing = found.SelectMany(f => f.Things.Select(t => (Thing: t, Finding: f))).ToLookup(p => p.Thing, p => p.Finding);
        var kept = new Dictionary<string, Finding>();
        foreach (var finding in found)
        {
            if (IsExplained(finding, givesWay[finding.Rule], byThing))
            {
                continue;
            }

            string key = finding.Rule + '\n' + string.Join('\n', finding.Things.Order(StringComparer.Ordinal));
            if (!kept.TryGetValue(key, out var first) || finding.Severity > first.Severity)
            {
                kept[key] = finding;
            }
        }

        return [.. kept.Values];
    }

    private static bool IsExplained(Finding finding, IReadOnlyList<string> stronger, ILookup<string, Finding> byThing)
        => stronger.Count > 0
            && finding.Things.Count > 0
            && byThing[finding.Things[0]].Any(other => stronger.Contains(other.Rule) && finding.Things.All(other.Things.Contains));
}
