using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;

namespace Floorplan.Checks.Rules.TheDay;

internal sealed class StepWithoutFigure : Rule
{
    public override string Name => "step-without-figure";

    public override RuleGroup Group => RuleGroup.TheDay;

    public override string Says => "The day has a target, and a figure is missing without which it cannot be run.";

    public override string Why => "Whether the line keeps up is then not known, and nothing else says so.";

    public override string Mend => "Write the figure; a first guess can be made better later.";

    public override IReadOnlyList<Source> Sources { get; } = [DaySources.Run];

    public override string Bad => DayExamples.Line("  work light", "  holds 5 shelves x 40 crates", crew: 1);

    public override IReadOnlyList<LineChange> Mended => [new("work light", "  work 12 s each, light")];

    public override bool AppliesTo(Plan plan) => plan.Day is { Targets.Count: > 0 };

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        foreach (var need in context.Facts.Day.Planned.Needs)
        {
            yield return CheckContext.Find(
                this, Severity.Note, [need.Of], $"the day is not judged: {need.Missing}", $"write {need.Write}", need.Span);
        }
    }
}
