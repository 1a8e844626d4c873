using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;

namespace Floorplan.Checks.Findings;

/// <summary>What findings follow from, as their rules declare it: one fault gives one finding.</summary>
internal static class FindingCauses
{
    /// <summary>What follows from another finding goes; of repeats the heaviest stays.</summary>
    public static IReadOnlyList<Finding> Keep(IReadOnlyList<Finding> found, IReadOnlyList<Rule> rules, Plan plan)
    {
        var rooms = plan.Rooms.Select(r => r.Id).ToHashSet(StringComparer.Ordinal);
        var relations = rules.SelectMany(r => r.FollowsFrom.Select(c => Relation(r.Name, c, rooms))).ToList();
        return ToldOnce.Keep(found, f => f.Rule, relations, f => f.Key, same => same.MaxBy(f => f.Severity)!);
    }

    private static FollowsFrom<Finding> Relation(string rule, Cause cause, HashSet<string> rooms)
    {
        return cause.Scope == CauseScope.Misplaced
            ? new(rule, f => f.Rule == cause.Rule
                && f.Misplaced
                && f.AcceptedBy is null, f => f.Things.Where(t => !rooms.Contains(t)), f => f.Things)
            : new(
                rule, f => f.Rule == cause.Rule, f
                    => f.Things, f => ThingsOf(f).Take(1))
            { When = (effect, stronger) => ThingsOf(effect).All(stronger.Things.Contains) };

        IReadOnlyList<string> ThingsOf(Finding finding)
        {
            string[] things = [.. finding.Things.Where(t => !rooms.Contains(t))];
            return things.Length > 0 ? things : finding.Things;
        }
    }
}
