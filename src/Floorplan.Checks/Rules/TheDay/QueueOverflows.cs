using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Sizing.Processing;
using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Checks.Rules.TheDay;

internal sealed class QueueOverflows : Rule
{
    private const string Over = "time over the stay, as a share of it";

    public override string Name => "queue-overflows";

    public override RuleGroup Group => RuleGroup.TheDay;

    public override string Says
        => "The product cannot leave a tank or rail when its time is over, because what comes next is full.";

    public override string Why
        => "A bird that waits in the scald tank cooks, milk that waits in the heater tastes of it, and what hangs too long holds up all "
            + "that follows.";

    public override string Mend => "Give what comes next more places, more hands or room to wait, or let fewer in at a time.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("half as long again; own choice, for want of a published figure", Origin.OwnAssumption),
    ];

    public override IReadOnlyList<RuleLimit> Limits => [new(Over, 50, LimitUnit.Percent, Sources[0], Severity.Warning)];

    public override string Bad => DayExamples.Line(
        "  work 2 s each\n  batch 12 crates\n  stays 60 s\n  holds 24 crates", "  holds 5 shelves x 40 crates", crew: 1);

    public override IReadOnlyList<LineChange> Mended => [new("batch 12 crates", "  batch 2 crates")];

    public override bool AppliesTo(Plan plan) => plan.Day is { Targets.Count: > 0 };

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var day = context.Facts.Day;
        if (day.Paced is not { } paced || !day.KeepsUp || context.Limit(this) is not { } limit)
        {
            yield break;
        }

        for (int s = 0; s < paced.Steps.Count; s++)
        {
            var step = paced.Line.Steps[s];
            var run = paced.Steps[s];

            // A machine stops when its cycle is over; what is being chilled or stored may wait.
            if (step.Stay.Mean == 0 || step.Places == LineStep.Unlimited || run.Items == 0
                || day.Planned.Stations[s] is not { Stays: not null, Cycle: null } station || station.Is(KnownProcess.Chilling))
            {
                continue;
            }

            double jobs = Math.Max(1, Math.Ceiling(run.Items / (double)step.Batch));
            double over = run.BlockedTime / jobs;
            double share = 100 * over / step.Stay.Mean;
            if (share > limit.Value)
            {
                yield return CheckContext.Find(
                    this, limit, share, [station.Id],
                    $"{Named.Of(station)}: the time is {QuantityText.Time(Ticks.Seconds(step.Stay.Mean))}, and on average the product "
                        + $"waits there for {QuantityText.Time(Ticks.Seconds((long)over))} more before it can leave",
                    "what comes next is full or its hands are busy: give it `waits` room, places or a person, or let fewer in at a time",
                    station.Span, station.Footprint.Centroid.Coordinate);
            }
        }
    }
}
