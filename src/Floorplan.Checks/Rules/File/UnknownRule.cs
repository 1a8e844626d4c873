using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Text;

namespace Floorplan.Checks.Rules.File;

internal sealed class UnknownRule : Rule
{
    public override string Name => "unknown-rule";

    public override RuleGroup Group => RuleGroup.File;

    public override string Says => "A `limit` or `accept` statement names a rule that does not exist.";

    public override string Why
        => "A limit under a misspelt name changes nothing, and an acceptance accepts nothing; both look as if they did.";

    public override string Mend => "Write the rule's name as the finding prints it; `floorplan rules` lists them all.";

    public override IReadOnlyList<Source> Sources { get; } = [new("The rule catalogue of this program", Origin.OwnAssumption)];

    public override string Bad => """
        plan "Egg room"
          units metric
        shell shed 4000 x 3000 x 2500
        room pack "Packing" clean from west to east
        door d1 pack to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself
        limit door-blockd 500 mm "agreed on site"
        """;

    public override IReadOnlyList<LineChange> Mended => [new("limit door-blockd", "limit door-blocked 500 mm \"agreed on site\"")];

    public override IEnumerable<Finding> Check(CheckContext context)
        => context.Plan.Limits.Select(l => (l.Rule, l.Span, Word: "limit"))
            .Concat(context.Plan.Acceptances.Select(a => (a.Rule, a.Span, Word: "accept")))
            .Where(s => RuleCatalogue.Find(s.Rule) is null)
            .Select(s => Found(s.Rule, s.Span, s.Word));

    private Finding Found(string name, SourceSpan span, string word)
        => CheckContext.Find(this, Severity.Warning, [name], $"`{word}` names a rule that does not exist: {name}",
            Way(name), span);

    private static string Way(string name) => RuleCatalogue.NewNameOf(name) is { } now
        ? $"this rule is now called `{now}`: write that"
        : NearNames.Hint(name, RuleCatalogue.All.Select(r => r.Name)) ?? "`floorplan rules` lists the names";
}
