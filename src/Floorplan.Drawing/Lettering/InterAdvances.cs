namespace Floorplan.Drawing.Lettering;

/// <summary>
/// Advance widths of the Inter typeface (Avalonia.Fonts.Inter 12.1.6, table hmtx), so that measuring needs no font file.
/// A test compares every figure with the font.
/// </summary>
internal static partial class InterAdvances
{
    /// <summary>Font units in one em (table head).</summary>
    public const int UnitsPerEm = 2816;

    /// <summary>Height of capitals in font units (table OS/2).</summary>
    public const int CapHeight = 2048;

    /// <summary>
    /// For characters that the font lacks and another font must draw: wide enough for a full-width ideograph (1 em) and for
    /// most colour pictographs (1.25 em; own assumption).
    /// </summary>
    public const int OtherAdvance = 3520;

    /// <summary>First and last character of each range in the tables.</summary>
    public static readonly (int First, int Last)[] Ranges =
    [
        (0x20, 0x7E), (0xA0, 0x17F), (0x370, 0x3FF), (0x400, 0x45F), (0x2010, 0x2027), (0x2030, 0x203A), (0x20A0, 0x20BF),
        (0x2190, 0x2193), (0x2200, 0x2265),
    ];

    /// <summary>Advance of one character in font units.</summary>
    public static int Of(int character, bool bold) => At(bold ? Bold : Regular, Index(character)) is > 0 and var advance
        ? advance
        : OtherAdvance;

    /// <summary>Where a character stands in the tables; -1 when it is in none.</summary>
    public static int Index(int character)
    {
        var start = 0;
        foreach (var (first, last) in Ranges)
        {
            if (character >= first && character <= last)
            {
                return start + character - first;
            }

            start += last - first + 1;
        }

        return -1;
    }

    /// <summary>0 when the font lacks the character.</summary>
    public static int At(ReadOnlySpan<ushort> table, int index) => index < 0 ? 0 : table[index];
}
