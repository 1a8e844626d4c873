using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Weights;

/// <summary>One part of what a unit weighs.</summary>
/// <param name="Name">For tables: <c>floor build-up: cement screed, 60 mm, not said</c>.</param>
public sealed record WeightPart(string Name, Figure Empty, Figure Full, Moment MomentEmpty, Moment MomentFull)
{
    public Moment Moment(bool full) => full ? MomentFull : MomentEmpty;

    public Figure Of(bool full) => full ? Full : Empty;

    /// <summary>What weighs the same full and empty.</summary>
    /// <param name="x">Of its middle, in plan mm.</param>
    internal static WeightPart Same(string name, Figure weight, double x, double y)
    {
        var moment = Weights.Moment.Of(weight.Value, x, y);
        return new(name, weight, weight, moment, moment);
    }

    internal static WeightPart OfThings(ItemWeights items)
    {
        string count = FormattableString.Invariant($"things with a weight: {items.Weighed.Count} of {items.All}");
        return new WeightPart(count, items.Empty, items.Full, Of(items, full: false), Of(items, full: true));
    }

    private static Moment Of(ItemWeights items, bool full) => Weights.Moment.Sum(
        items.Weighed.Select(w => (w.Of(full).Value, w.Station.Footprint.EnvelopeInternal.Centre))
            .Select(p => Weights.Moment.Of(p.Value, p.Centre.X, p.Centre.Y)));
}
