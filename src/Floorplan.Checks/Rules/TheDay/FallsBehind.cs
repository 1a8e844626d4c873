using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Sizing.Simulation.Gains;

namespace Floorplan.Checks.Rules.TheDay;

internal sealed class FallsBehind : Rule
{
    public override string Name => "falls-behind";

    public override RuleGroup Group => RuleGroup.TheDay;

    public override string Says => "The line makes fewer items an hour than the target of the day.";

    public override string Why =>
        "A line is as fast as its slowest part. What it cannot make stays over at the end of the day, alive, warm or in the way.";

    public override string Mend =>
        "Give more hands, places or time to what holds the line up first; `floorplan day` says what each change would gain.";

    public override IReadOnlyList<Source> Sources { get; } = [DaySources.Run];

    public override string Bad => DayExamples.Line("  work 60 s each", "  holds 5 shelves x 40 crates", crew: 1);

    public override IReadOnlyList<LineChange> Mended => [new("work 60 s each", "  work 12 s each")];

    public override bool AppliesTo(Plan plan) => plan.Day is { Targets.Count: > 0 };

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var day = context.Facts.Day;
        if (day.FlatOut is null || day.KeepsUp)
        {
            yield break;
        }

        var planned = day.Planned;
        var best = DayGains.Best(day);
        IReadOnlyList<string> things = best is null ? DaySources.Crews(context.Plan) : [best.Changes[0].Of];
        string limit = best is null ? "" : $"; {best.Changes[0].Of} holds it up first";
        string mend = best is null
            ? "no one change helps; `floorplan day` shows which two do, and the use of every station and person"
            : $"{best.Text} would make {QuantityText.Coarse(best.Rate)} {planned.Unit}/h";
        yield return CheckContext.Find(
            this, Severity.Warning, things,
            $"the line makes {QuantityText.Coarse(day.Rate)} of the {QuantityText.Coarse(planned.TargetPerHour)} {planned.Unit}/h of the "
                + $"target{limit}",
            mend, context.Plan.Day!.Span) with
        {
            Measured = day.Rate,
            LimitValue = planned.TargetPerHour,
            Swap = best?.Changes is [{ People: { } people, Of: var crew }] ? DaySources.Crew(crew, people - 1, people) : null,
        };
    }
}
