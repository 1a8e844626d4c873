using Floorplan.Checks.Findings;
using Floorplan.Model;

namespace Floorplan.Checks.Rules.TheDay;

/// <summary>Where the rules of the day come from: the day is run as the plan says it, and its sums need no figure of others.</summary>
internal static class DaySources
{
    public static Source Run { get; } = new(
        "the day of the plan, run item by item; the ways of running are held against queueing formulas", Origin.OwnAssumption);

    /// <summary>What a finding about the whole day is about: the rooms and stations where people are counted.</summary>
    public static IReadOnlyList<string> Crews(Plan plan) => [.. plan.Day!.Crew.Keys.Order(StringComparer.Ordinal)];

    /// <summary>Another number of people in the plan's <c>crew</c>.</summary>
    public static WordSwap Crew(string name, int were, int are)
        => new(FormattableString.Invariant($"{name} {were}"), FormattableString.Invariant($"{name} {are}"));

    public static Source Sum { get; } = new("what comes in against what finds room", Origin.CommonPractice);
}
