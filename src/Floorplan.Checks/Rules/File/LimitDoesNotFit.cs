using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Language.Diagnostics;

namespace Floorplan.Checks.Rules.File;

internal sealed class LimitDoesNotFit : Rule
{
    public override string Name => "limit-does-not-fit";

    public override RuleGroup Group => RuleGroup.File;

    public override string Says
        => "A `limit` statement sets a figure for a rule that has none, sets one in a unit of another kind, or sets one that a later "
            + "statement sets again.";

    public override string Why => "The statement has no effect, and whoever reads the plan believes that it has.";

    public override string Mend => "Give the figure in the unit that the rule measures in, or accept the finding instead.";

    public override IReadOnlyList<Source> Sources { get; } = [new("The rule catalogue of this program", Origin.OwnAssumption)];

    public override string Bad => """
        plan "Egg room"
          units metric
        shell shed 4000 x 3000 x 2500
        room pack "Packing" clean from west to east
        door d1 pack to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself
        limit door-blocked 20 % "agreed on site"
        """;

    public override IReadOnlyList<LineChange> Mended => [new("limit door-blocked", "limit door-blocked 500 mm \"agreed on site\"")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        foreach (var set in context.Plan.Limits)
        {
            if (RuleCatalogue.Find(set.Rule) is not { } rule)
            {
                continue;
            }

            if (rule.Limits.Count == 0)
            {
                yield return CheckContext.Find(this, Severity.Warning, [set.Rule], $"{set.Rule} has no figure to set",
                    $"write `accept {set.Rule} at … \"reason\"` for a single finding", set.Span);
            }
            else if (LimitUnits.Value(set, rule.Limits[0].Unit) is null)
            {
                yield return CheckContext.Find(
                    this, Severity.Warning, [set.Rule], $"{set.Rule} is measured in another unit than the one given",
                    $"give {LimitUnits.Asked(rule.Limits[0].Unit, context.Plan.Units)}: it is the {rule.Limits[0].Key}", set.Span);
            }
            else if (context.Plan.Limits.Any(l => l.Rule == set.Rule && l.Span.Start > set.Span.Start && l.Span.Source == set.Span.Source))
            {
                yield return CheckContext.Find(
                    this, Severity.Warning, [set.Rule], $"{set.Rule} is set again further down, and the last one counts",
                    "keep one of them", set.Span);
            }
        }
    }
}
