namespace Floorplan.Tests.Sizing.Simulation;

/// <summary>The mean of independent runs and the half width of its 95 % band.</summary>
internal readonly record struct Interval(double Mean, double Half)
{
    /// <summary>Student's t for 19 degrees of freedom, 95 %, two sides: 2.093 (any table).</summary>
    private const double StudentFor20 = 2.093;

    /// <summary>Of twenty runs.</summary>
    public static Interval Of20(Func<int, double> run, int firstSeed = 1)
    {
        double[] values = [.. Enumerable.Range(firstSeed, 20).AsParallel().AsOrdered().Select(run)];
        double mean = values.Average();
        double deviation = Math.Sqrt(values.Sum(v => (v - mean) * (v - mean)) / 19);
        return new Interval(mean, StudentFor20 * deviation / Math.Sqrt(20));
    }

    public bool Holds(double value) => Math.Abs(value - Mean) <= Half;

    /// <summary>Within twice the band, which a right program almost never leaves; the band itself once in twenty times.</summary>
    public bool AlmostHolds(double value) => Math.Abs(value - Mean) <= 2 * Half;

    public override string ToString() => FormattableString.Invariant($"{Mean:0.####} ± {Half:0.####}");
}
