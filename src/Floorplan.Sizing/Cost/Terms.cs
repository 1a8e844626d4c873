namespace Floorplan.Sizing.Cost;

/// <summary>Interest and how long the unit lasts; both null unless both are said.</summary>
/// <param name="Interest">A year, of 1.</param>
/// <param name="Life">Years.</param>
internal sealed record Terms(Factor? Interest, Factor? Life)
{
    private const double Percent = 0.01;

    public static Terms Of(OwnersRates rates)
        => rates.Find("interest", RateKind.Share) is { } interest && rates.Find("life", RateKind.Yearly) is { } life
            ? new Terms(interest.Factor, life.Factor)
            : new Terms(null, null);

    /// <summary>Net present value over all ends of the ranges; null without interest and life.</summary>
    public Range? Present(Range build, Range surplus)
    {
        if (Interest is null || Life is null)
        {
            return null;
        }

        List<double> values =
        [
            .. from spent in new[] { build.Low, build.High }
               from yearly in new[] { surplus.Low, surplus.High }
               from percent in new[] { Interest.Of.Low, Interest.Of.High }
               from years in new[] { Life.Of.Low, Life.Of.High }
               select Worth.Present(spent, yearly, percent * Percent, years),
        ];
        return new Range(values.Min(), values.Max());
    }
}
