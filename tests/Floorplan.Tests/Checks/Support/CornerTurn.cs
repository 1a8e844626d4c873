namespace Floorplan.Tests.Checks.Support;

/// <summary>A rectangle pushed round a corner, as textbooks work it out.</summary>
internal static class CornerTurn
{
    /// <summary>Steps of the angle that is looked at; the answer is within a thousandth.</summary>
    private const int Steps = 1800;

    /// <summary>
    /// The longest rectangle of a width that goes round a right-angled corner between two passages, all in mm; no less than zero. At
    /// each angle both its ends touch the outer walls while its side touches the inner corner: the shortest of those lengths is the
    /// answer. For a width of nothing it is the textbook ladder, (a^(2/3) + b^(2/3))^(3/2).
    /// </summary>
    public static double Longest(double a, double b, double width)
    {
        double longest = double.PositiveInfinity;
        for (int i = 1; i < Steps; i++)
        {
            var (sin, cos) = Math.SinCos(Math.PI / 2 * i / Steps);
            longest = Math.Min(longest, ((a * cos) + (b * sin) - width) / (sin * cos));
        }

        return Math.Max(0, longest);
    }
}
