namespace Floorplan.Sizing.Simulation.Line;

/// <summary>How long something takes, in <see cref="Ticks"/>, and how much that differs from one time to the next.</summary>
/// <param name="Mean">On average.</param>
/// <param name="Spread">Standard deviation over mean; of <see cref="TimeShape.Random"/> always 1.</param>
public readonly record struct TaskTime(long Mean, TimeShape Shape = TimeShape.Fixed, double Spread = 0)
{
    public static TaskTime None { get; } = new(0);

    public static TaskTime OfSeconds(double seconds) => new(Ticks.FromSeconds(seconds));

    /// <summary>Times that keep no memory of how long they have lasted: the exponential ones of queueing formulas.</summary>
    public static TaskTime RandomSeconds(double mean) => new(Ticks.FromSeconds(mean), TimeShape.Random, 1);

    /// <summary>Hand work: never below nothing and sometimes much longer, so its logarithm is normal (own assumption).</summary>
    public static TaskTime HandSeconds(double mean, double spread)
        => spread > 0 ? new(Ticks.FromSeconds(mean), TimeShape.Hand, spread) : OfSeconds(mean);

    public TaskTime Times(double factor) => this with { Mean = (long)Math.Round(Mean * factor) };

    /// <summary>One draw.</summary>
    public long Draw(Random random) => Shape switch
    {
        TimeShape.Fixed => Mean,
        TimeShape.Random => (long)Math.Round(-Mean * Math.Log(1 - random.NextDouble())),
        _ => (long)Math.Round(Mean * Lognormal(random)),
    };

    /// <summary>With mean 1: Box and Muller 1958.</summary>
    private double Lognormal(Random random)
    {
        double variance = Math.Log(1 + (Spread * Spread));
        double normal = Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        return Math.Exp((Math.Sqrt(variance) * normal) - (variance / 2));
    }
}

public enum TimeShape
{
    Fixed,
    Random,
    Hand,
}
