using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Plans;

namespace Floorplan.Checks.Rules.TheDay;

internal sealed class CrewOverworked : Rule
{
    private const string Share = "share of the time that a person has work";
    private const string WithoutBreak = "work without a break";

    public override string Name => "crew-overworked";

    public override RuleGroup Group => RuleGroup.TheDay;

    public override string Says
        => "At the pace of the target somebody has work for nearly all of the time, or the day is long and has no break.";

    public override string Why
        => "Nobody works every second of hours on end. Tired hands slip with knives, and the pace on paper is not the pace of the day.";

    public override string Mend => "Give the crew one more person, help from another room, or a break; or ask less of the day.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new(
            "allowances of Niebel and of the ILO, Introduction to Work Study: 5 % personal, 4 % basic fatigue, 2 % standing",
            Origin.FoundInPublicCopy),
        new("Directive 2003/88/EC, article 4: a break where the day is longer than 6 h", Origin.FromMemory, Force.Law),
        new("Directive 2003/88/EC, article 4, as advice", Origin.FromMemory, Force.Law),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(Share, 89, LimitUnit.Percent, Sources[0], Severity.Warning),
        new(WithoutBreak, 360, LimitUnit.Minutes, Sources[1], Severity.Warning, CodeChoice.Eu),
        new(WithoutBreak, 360, LimitUnit.Minutes, Sources[2], Severity.Note, CodeChoice.Us, CodeChoice.None),
    ];

    public override string Bad => DayExamples.Line("  work 20 s each", "  holds 5 shelves x 40 crates", crew: 1);

    public override IReadOnlyList<LineChange> Mended => [new("work 20 s each", "  work 12 s each")];

    public override bool AppliesTo(Plan plan) => plan.Day is { Targets.Count: > 0 };

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var day = context.Facts.Day;
        if (day.Paced is not { } paced || !day.KeepsUp)
        {
            // A line that falls behind says so itself: there everybody has too much to do.
            return [];
        }

        return Busy(context, paced).Concat(Long(context, day) is { } found ? [found] : []);
    }

    private IEnumerable<Finding> Busy(CheckContext context, LineOutcome paced)
    {
        if (context.Limit(this, Share) is not { } limit)
        {
            yield break;
        }

        long rest = paced.Line.Breaks.Sum(b => b.To - b.From);
        foreach (var crew in paced.People.Where(p => p.Until > rest).GroupBy(p => p.Crew))
        {
            double[] shares = [.. crew.Select(p => 100.0 * (paced.End - p.Waiting) / (p.Until - rest))];
            double most = shares.Max();
            int people = shares.Count(s => s > limit.Value);
            if (people > 0)
            {
                string name = paced.Line.Crews[crew.Key].Name;
                yield return CheckContext.Find(
                    this, limit, most, [name],
                    $"{QuantityText.Plain(people)} of {QuantityText.Count(crew.Count(), "person", "people")} at {name} "
                        + $"{(people == 1 ? "has" : "have")} work for up to {Percent(most)} of the time; over {Percent(limit.Value)} no "
                        + "time is left for tired hands",
                    $"count one more at {name}, let others help there, or ask for fewer an hour", context.Plan.Day!.Span) with
                {
                    Swap = DaySources.Crew(name, crew.Count(), crew.Count() + 1),
                };
            }
        }
    }

    private Finding? Long(CheckContext context, PlannedDay day)
    {
        if (DayFrame.Of(context.Plan, day) is not { } frame || day.Paced!.Line.Breaks.Count > 0
            || context.Limit(this, WithoutBreak) is not { } limit || Ticks.Minutes(frame.CrewTime) <= limit.Value)
        {
            return null;
        }

        return CheckContext.Find(
            this, limit, Ticks.Minutes(frame.CrewTime), DaySources.Crews(context.Plan),
            $"the crew is there for {QuantityText.Time(Ticks.Seconds(frame.CrewTime))}, and the day has no break",
            "write `breaks 30 min` in the day", context.Plan.Day!.Span);
    }

    private static string Percent(double share) => QuantityText.Of(share / 100, Measure.Ratio, UnitSystem.Metric);
}
