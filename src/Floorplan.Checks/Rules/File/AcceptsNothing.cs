using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Limits;

namespace Floorplan.Checks.Rules.File;

/// <summary>Looks at what all rules before it found, so it is the last of the catalogue.</summary>
internal sealed class AcceptsNothing : Rule
{
    public override string Name => "accepts-nothing";

    public override RuleGroup Group => RuleGroup.File;

    public override string Says => "An `accept` statement fits no finding: the fault is mended, or the things are named wrongly.";

    public override string Why
        => "An acceptance left behind would silently cover the fault if it came back; one with a wrong name leaves a finding standing "
            + "that somebody believes settled.";

    public override string Mend => "Take the statement out, or name the things as the finding does.";

    public override IReadOnlyList<Source> Sources { get; } = [new("The findings of this plan", Origin.OwnAssumption)];

    public override string Bad => """
        plan "Oyster room"
          units metric
        shell shed 4000 x 3000 x 2500
        room shuck "Shucking" clean from west to east
        door d1 shuck to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself
        drain fd1 floor in shuck, 2500 from west, 1500 from south, 100
        sink s1 hand in shuck, 400 x 350, against east wall, 600 from south
        station bench "Shucking bench" in shuck
          size 1500 x 600 x 900
          place against north wall, 1000 from west
          worker south
        accept door-blocked at d1 and bench "the bench is light" by "site owner"
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("place against", "  place 400 from west, 400 from south"),
        LineChange.Without("worker south"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var found = context.Found.ToLookup(f => f.Rule);

        // An acceptance of this rule itself can only be judged by what this rule finds.
        return context.Plan.Acceptances
            .Where(a => a.Rule != Name && RuleCatalogue.Find(a.Rule) is not null && !found[a.Rule].Any(f => Acceptances.Covers(a, f)))
            .Select(a => Found(a, found[a.Rule].FirstOrDefault()));
    }

    private Finding Found(Acceptance acceptance, Finding? sameRule)
    {
        string at = acceptance.Things.Count == 0 ? "" : " at " + Named.List(acceptance.Things);
        return CheckContext.Find(
            this, Severity.Note, [acceptance.Rule, .. acceptance.Things], $"nothing to accept: {acceptance.Rule} finds nothing{at}",
            sameRule is null
                ? "take the statement out"
                : $"{acceptance.Rule} stands at {Named.List(sameRule.Things)}; name these, or take the statement out",
            acceptance.Span);
    }
}
