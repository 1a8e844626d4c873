using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Plans;

namespace Floorplan.Checks.Rules.TheDay;

internal sealed class StoreTooSmall : Rule
{
    public override string Name => "store-too-small";

    public override RuleGroup Group => RuleGroup.TheDay;

    public override string Says => "More comes into a store in a day than it holds.";

    public override string Why => "What finds no place in the cold stays warm, or the line stops until something is taken away.";

    public override string Mend => "Make the store hold the day's work, or make fewer in a day.";

    public override IReadOnlyList<Source> Sources { get; } = [DaySources.Sum];

    public override string Bad => DayExamples.Line("  work 12 s each", "  holds 4 shelves x 40 crates", crew: 1);

    public override IReadOnlyList<LineChange> Mended => [new("holds 4 shelves", "  holds 5 shelves x 40 crates")];

    public override bool AppliesTo(Plan plan) => plan.Day is { Targets.Count: > 0 };

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        foreach (var store in DayStore.Of(context.Plan, context.Facts.Day))
        {
            if (store is not { FullAt: { } full, Holds: { } holds })
            {
                continue;
            }

            string unit = context.Facts.Day.Planned.Things;
            var station = context.Plan.Stations.First(s => s.Id == store.Id);
            yield return CheckContext.Find(
                this, Severity.Warning, [store.Id],
                $"{store.Id} holds {QuantityText.Plain(holds, 0)} {unit} and {QuantityText.Plain(store.Items, 0)} come in the day: "
                    + $"it is full {QuantityText.Time(Ticks.Seconds(full))} after the start",
                $"make {store.Id} hold {QuantityText.Plain(store.Items, 0)} {unit}, or make fewer in a day",
                station.Span, station.Footprint.Centroid.Coordinate) with
            {
                Measured = store.Items,
                LimitValue = holds,
            };
        }
    }
}
