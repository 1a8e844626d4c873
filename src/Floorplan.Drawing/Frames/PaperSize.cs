using Floorplan.Language.Quantities;

namespace Floorplan.Drawing.Frames;

/// <summary>A sheet of paper, landscape, in mm.</summary>
public sealed record PaperSize(string Name, double Width, double Height)
{
    private const double Inch = InchPound.MillimetresPerInch;

    /// <summary>ISO 216, smallest first; A3 is the default.</summary>
    public static IReadOnlyList<PaperSize> Iso { get; } =
        [new("A3", 420, 297), new("A2", 594, 420), new("A1", 841, 594), new("A0", 1189, 841)];

    /// <summary>ASME Y14.1 sizes (F2), smallest first; 11 x 17 in is the default.</summary>
    public static IReadOnlyList<PaperSize> Us { get; } =
    [
        new("11 x 17 in", 17 * Inch, 11 * Inch), new("17 x 22 in", 22 * Inch, 17 * Inch),
        new("22 x 34 in", 34 * Inch, 22 * Inch), new("34 x 44 in", 44 * Inch, 34 * Inch),
    ];

    private static readonly PaperSize[] Small = [new("A4", 297, 210), new("8.5 x 11 in", 11 * Inch, 8.5 * Inch)];

    public static IReadOnlyList<PaperSize> For(UnitSystem units) => units == UnitSystem.Metric ? Iso : Us;

    /// <summary>A size by the name that a <c>sheet</c> statement gives; null when unknown.</summary>
    public static PaperSize? Find(string name)
    {
        string plain = Plain(name);
        return Iso.Concat(Us).Concat(Small).FirstOrDefault(p => Plain(p.Name) == plain);
    }

    private static string Plain(string name)
        => name.Replace(" ", "", StringComparison.Ordinal).Replace("in", "", StringComparison.OrdinalIgnoreCase)
            .Replace("\"", "", StringComparison.Ordinal).ToUpperInvariant();
}
