using Floorplan.Sizing.Weights;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Trailers;

/// <summary>The least and the most that a hitch carries of a trailer's weight, whichever of its tanks are full.</summary>
/// <param name="FullAtLeast">Captions of what is full then.</param>
public sealed record TankStates(
    TrailerLoad Least, IReadOnlyList<string> FullAtLeast, TrailerLoad Most, IReadOnlyList<string> FullAtMost)
{
    private const string Heaters = "water heaters";

    /// <summary>Null where the plan does not say enough, or where nothing is heavier full than empty.</summary>
    internal static TankStates? Of(PlanFacts facts)
    {
        if (facts.TrailerLoads is not [_, var empty])
        {
            return null;
        }

        var tanks = Tanks(facts);
        if (tanks.Count == 0)
        {
            return null;
        }

        List<(Figure Weight, Moment Moment)> always = [.. facts.Weight.Parts.Where(p => !IsFilled(p)).Select(p => (p.Full, p.MomentFull))];
        List<Tank> front = [.. tanks.OrderBy(t => TrailerLoad.FromCoupling(facts.Plan, t.X))];
        var most = Extreme(front, share => share);
        front.Reverse();
        var least = Extreme(front, share => -share);
        return least is null || most is null ? null : new TankStates(
            least.Value.Load, [.. least.Value.Full.Select(t => t.Name)], most.Value.Load, [.. most.Value.Full.Select(t => t.Name)]);

        // The share is a mean of shares, weighted: a tank in is worth it exactly when it lies on the right side of that mean, so the
        // best set is all tanks up to some place.
        (TrailerLoad Load, IReadOnlyList<Tank> Full)? Extreme(List<Tank> order, Func<double, double> worth)
        {
            bool isMost = worth(1) > 0;
            int best = Enumerable.Range(0, order.Count + 1).MaxBy(n => worth(Share(order, n)));
            var state = LoadState.Of(isMost ? "most on the hitch" : "least on the hitch", PartsOf(order, best), facts.Plan.Units);
            return TrailerLoad.Of(facts, state) is { } load ? (load, order[..best]) : null;
        }

        double Share(List<Tank> order, int full)
        {
            var parts = PartsOf(order, full).ToList();
            double kilograms = parts.Sum(p => p.Weight.Value);
            return kilograms > 0 ? TrailerLoad.ShareOf(facts.Plan, kilograms, Moment.Sum(parts.Select(p => p.Moment))) : 0;
        }

        IEnumerable<(Figure Weight, Moment Moment)> PartsOf(List<Tank> order, int full) =>
            always.Concat(order.Select((t, i) => i < full ? (t.Full, t.MomentFull) : (t.Empty, t.MomentEmpty)))
                .Concat(facts.Items.Weighed.Where(w => w.Full.Value <= w.Empty.Value).Select(w => (w.Full, At(w, full: true))));
    }

    private static bool IsFilled(WeightPart part) => part.Full != part.Empty;

    private static List<Tank> Tanks(PlanFacts facts) =>
    [
        .. facts.Items.Weighed.Where(w => w.Full.Value > w.Empty.Value).Select(w => new Tank(
            w.Station.Caption, w.Empty, At(w, full: false), w.Full, At(w, full: true),
            w.Station.Footprint.EnvelopeInternal.Centre.X)),
        .. HeaterWater.Of(facts.Plan) is { Full.Value: > 0 } heaters
            ? [new Tank(
                Heaters, heaters.Empty, heaters.MomentEmpty, heaters.Full, heaters.MomentFull,
                heaters.MomentFull.East / heaters.Full.Value)]
            : Array.Empty<Tank>(),
    ];

    private static Moment At(ItemWeight item, bool full)
    {
        var middle = item.Station.Footprint.EnvelopeInternal.Centre;
        return Moment.Of(item.Of(full).Value, middle.X, middle.Y);
    }

    private sealed record Tank(string Name, Figure Empty, Moment MomentEmpty, Figure Full, Moment MomentFull, double X);
}
