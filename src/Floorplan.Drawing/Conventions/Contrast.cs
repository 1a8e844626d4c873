namespace Floorplan.Drawing.Conventions;

/// <summary>How far two colours stand apart for the eye, by WCAG 2: 1 for the same, 21 for black and white.</summary>
internal static class Contrast
{
    /// <param name="a">As 0xRRGGBB.</param>
    /// <param name="b">As 0xRRGGBB.</param>
    public static double Between(int a, int b)
    {
        var (low, high) = (Math.Min(Luminance(a), Luminance(b)), Math.Max(Luminance(a), Luminance(b)));
        return (high + 0.05) / (low + 0.05);
    }

    private static double Luminance(int rgb)
        => (0.2126 * Linear(rgb >> 16)) + (0.7152 * Linear(rgb >> 8 & 255)) + (0.0722 * Linear(rgb & 255));

    private static double Linear(int part)
    {
        double share = part / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
    }
}
