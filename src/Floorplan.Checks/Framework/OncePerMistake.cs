using Floorplan.Model;

namespace Floorplan.Checks.Framework;

/// <summary>One mistake gives one finding: repeats go, and so does a finding that a stronger rule already explains.</summary>
internal static class OncePerMistake
{
    public static IReadOnlyList<Finding> Keep(IReadOnlyList<Finding> found, IReadOnlyList<Rule> rules, Plan plan)
    {
        var givesWay = rules.ToDictionary(r => r.Name, r => r.GivesWayTo);
        var byThing = found.SelectMany(f => f.Things.Select(t => (Thing: t, Finding: f))).ToLookup(p => p.Thing, p => p.Finding);
        var rooms = plan.Rooms.Select(r => r.Id).ToHashSet(StringComparer.Ordinal);
        var misplaced = Misplaced(found, rules, rooms);
        var kept = new Dictionary<string, Finding>();
        foreach (var finding in found)
        {
            if (IsExplained(finding, givesWay[finding.Rule], byThing, rooms) || finding.Things.Any(t => misplaced.Contains((finding.Rule, t))))
            {
                continue;
            }

            string key = finding.Key;
            if (!kept.TryGetValue(key, out var first) || finding.Severity > first.Severity)
            {
                kept[key] = finding;
            }
        }

        return [.. kept.Values];
    }

    /// <summary>Rules and the things on which they stay silent. An accepted place stands, so that what follows from it is told.</summary>
    private static HashSet<(string Rule, string Thing)> Misplaced(IEnumerable<Finding> found, IEnumerable<Rule> rules, HashSet<string> rooms)
    {
        var explains = rules.ToDictionary(r => r.Name, r => r.Explains);
        return [.. found
            .Where(f => f.Misplaced && f.AcceptedBy is null)
            .SelectMany(f => f.Things.Where(t => !rooms.Contains(t)).SelectMany(t => explains[f.Rule].Select(r => (r, t))))];
    }

    /// <summary>The stronger finding names all things of the weaker one; its room only where it names nothing else.</summary>
    private static bool IsExplained(Finding finding, IReadOnlyList<string> stronger, ILookup<string, Finding> byThing, HashSet<string> rooms)
    {
        if (stronger.Count == 0 || finding.Things.Count == 0)
        {
            return false;
        }

        string[] things = [.. finding.Things.Where(t => !rooms.Contains(t))];
        IReadOnlyList<string> named = things.Length > 0 ? things : finding.Things;
        return byThing[named[0]].Any(other => stronger.Contains(other.Rule) && named.All(other.Things.Contains));
    }
}
