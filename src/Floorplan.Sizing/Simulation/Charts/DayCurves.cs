using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Plans;

namespace Floorplan.Sizing.Simulation.Charts;

/// <summary>What fills up through the day: stores, tanks and racks within the line, room to wait, bins.</summary>
internal static class DayCurves
{
    /// <summary>More points than these cannot be seen on a page; own choice.</summary>
    private const int MostPoints = 240;

    public static IReadOnlyList<DayCurve> Of(PlanFacts facts, LineOutcome outcome, LineRecord record, long end)
    {
        var planned = facts.Day.Planned;
        var counts = record.Steps.ToLookup(c => c.Step);
        var stores = DayStore.Of(facts.Plan, facts.Day).Select(store =>
        {
            int step = outcome.Line.Steps.Index().First(s => s.Item.Name == store.Id).Index;
            return Curve(
                DayCurveKind.Store, store.Id, planned.Things, store.Holds, store.FullAt,
                counts[step].Select(c => (c.At, (double)c.Started)),
                end);
        });

        // What is at a station is written down for the first time that product is there.
        var steps = outcome.Line.Steps.Index().Where(s => s.Item.SameAs < 0).ToList();
        return
        [
            .. stores,
            .. steps.Where(s => s.Item is { Places: > 1 and < LineStep.Unlimited, Stay.Mean: > 0 })
                .Select(s => Places(s.Item, counts[s.Index], planned.Things, end)),
            .. steps.Where(s => planned.Stations[s.Index]?.Waits is not null && s.Item.Waits > 0)
                .Select(s => Curve(
                    DayCurveKind.Queue, s.Item.Name, planned.Things, s.Item.Waits, null,
                    counts[s.Index].Select(c => (c.At, (double)c.Waiting)), end)),
            .. outcome.Bins.Index().Select(b => Curve(
                DayCurveKind.Bin, b.Item.Bin.Name, DayCurve.Kilograms, b.Item.Bin.Kilograms, b.Item.FullAt,
                record.Bins.Where(l => l.Bin == b.Index).Select(l => (l.At, l.Kilograms)), end)),
        ];
    }

    private static DayCurve Places(LineStep step, IEnumerable<StepCount> counts, string unit, long end)
    {
        double holds = (double)step.Places * step.Batch;
        var points = counts.Select(c => (c.At, Value: (double)StepItems.InPlaces(step, c))).ToList();
        long? full = points.Where(p => p.Value >= holds).Select(p => (long?)p.At).FirstOrDefault();
        return Curve(DayCurveKind.Places, step.Name, unit, holds, full, points, end);
    }

    private static DayCurve Curve(
        DayCurveKind kind, string of, string unit, double? holds, long? fullAt, IEnumerable<(long At, double Value)> points, long end)
    {
        // Of several changes at one moment the last is what is there.
        var all = new List<(long At, double Value)> { (0, 0) };
        foreach (var point in points)
        {
            if (all[^1].At == point.At)
            {
                all[^1] = point;
            }
            else if (!all[^1].Value.Equals(point.Value))
            {
                all.Add(point);
            }
        }

        return new DayCurve(kind, of, unit, holds, fullAt, DayCurve.Few(all, end, MostPoints));
    }
}
