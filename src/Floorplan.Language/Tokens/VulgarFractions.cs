namespace Floorplan.Language.Tokens;

/// <summary>One-character fractions and their exact value as numerator and denominator.</summary>
internal static class VulgarFractions
{
    public static (int Over, int Under)? Value(char c) => c switch
    {
        '\u00BC' => (1, 4),
        '\u00BD' => (1, 2),
        '\u00BE' => (3, 4),
        '\u2153' => (1, 3),
        '\u2154' => (2, 3),
        '\u215B' => (1, 8),
        '\u215C' => (3, 8),
        '\u215D' => (5, 8),
        '\u215E' => (7, 8),
        _ => null,
    };
}
