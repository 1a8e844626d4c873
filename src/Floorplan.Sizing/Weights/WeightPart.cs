using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Weights;

/// <summary>One part of what a unit weighs.</summary>
/// <param name="Name">For tables: <c>floor build-up: cement screed, 60 mm, not said</c>.</param>
/// <param name="MomentEmpty">Weight times its distance east of the plan's origin, in kg mm.</param>
public sealed record WeightPart(string Name, Figure Empty, Figure Full, double MomentEmpty, double MomentFull)
{
    public double Moment(bool full) => full ? MomentFull : MomentEmpty;

    public Figure Of(bool full) => full ? Full : Empty;

    /// <summary>What weighs the same full and empty.</summary>
    internal static WeightPart Same(string name, Figure weight, double centreX) =>
        new(name, weight, weight, weight.Value * centreX, weight.Value * centreX);

    internal static WeightPart OfThings(ItemWeights items)
    {
        string count = FormattableString.Invariant($"things with a weight: {items.Weighed.Count} of {items.All}");
        return new WeightPart(count, items.Empty, items.Full, Moment(items, full: false), Moment(items, full: true));
    }

    private static double Moment(ItemWeights items, bool full) =>
        items.Weighed.Sum(w => w.Of(full).Value * w.Station.Footprint.EnvelopeInternal.Centre.X);
}
