namespace Floorplan.Drawing.Lettering;

/// <summary>Breaks text into lines that fit a width.</summary>
public static class TextWrap
{
    /// <summary>At spaces, within a word only when the word is too long; what is over the last line ends in an ellipsis.</summary>
    public static IReadOnlyList<string> Lines(string text, double width, double capHeight, bool bold = false, int most = int.MaxValue)
    {
        var lines = new List<string>();
        string rest = text;
        while (rest.Length > 0)
        {
            if (lines.Count == most - 1)
            {
                lines.Add(SafeText.Fit(rest, width, capHeight, bold));
                return lines;
            }

            int end = LineEnd(rest, width, capHeight, bold);
            lines.Add(rest[..end].TrimEnd());
            rest = rest[end..].TrimStart();
        }

        return lines;
    }

    private static int LineEnd(string text, double width, double capHeight, bool bold)
    {
        var at = 0;
        var lastSpace = 0;
        double used = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            used += TextMeasure.Width(rune.ToString(), capHeight, bold);
            if (rune.Value == ' ')
            {
                lastSpace = at;
            }

            if (used > width && rune.Value != ' ')
            {
                // A first character wider than the column still has to go somewhere.
                return lastSpace > 0 ? lastSpace : Math.Max(at, rune.Utf16SequenceLength);
            }

            at += rune.Utf16SequenceLength;
        }

        return text.Length;
    }
}
