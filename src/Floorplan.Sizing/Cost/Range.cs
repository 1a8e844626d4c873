namespace Floorplan.Sizing.Cost;

/// <summary>From the least to the most that something may be.</summary>
internal readonly record struct Range(double Low, double High)
{
    public static Range Zero => default;

    public bool IsOne => Low.Equals(High);

    public double Middle => (Low + High) / 2;

    public static Range Of(double value) => new(value, value);

    public static Range operator +(Range a, Range b) => new(a.Low + b.Low, a.High + b.High);

    public static Range operator -(Range a, Range b) => new(a.Low - b.High, a.High - b.Low);

    /// <summary>Of two that may be less than zero.</summary>
    public static Range operator *(Range a, Range b)
    {
        double[] ends = [a.Low * b.Low, a.Low * b.High, a.High * b.Low, a.High * b.High];
        return new Range(ends.Min(), ends.Max());
    }

    public static Range operator *(double times, Range a) => Of(times) * a;
}
