using System.Text;
using Floorplan.Language.Text;

namespace Floorplan.Drawing.Lettering;

/// <summary>Makes text from a file fit to draw.</summary>
public static class SafeText
{
    /// <summary>No text on a sheet is longer, in characters; what is over ends in an ellipsis. Own assumption.</summary>
    public const int Longest = 200;

    /// <summary>Kept as it is, so that a number and its fraction stay together.</summary>
    private const int NoBreakSpace = 0xA0;

    private const string Ellipsis = "\u2026";

    /// <summary>
    /// One line without control characters, marks that change reading direction, invisible or unpaired characters; runs of white
    /// space become one space; at most <paramref name="longest"/> characters.
    /// </summary>
    public static string Clean(string text, int longest = Longest)
    {
        var clean = new StringBuilder(Math.Min(text.Length, longest + 2));
        var count = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            bool space = Rune.IsWhiteSpace(rune) && rune.Value != NoBreakSpace;
            if (space ? clean.Length == 0 || clean[^1] == ' ' : !IsDrawn(rune))
            {
                continue;
            }

            if (count == longest)
            {
                return string.Concat(
                    clean.ToString().AsSpan(0, clean.Length - (char.IsLowSurrogate(clean[^1]) ? 2 : 1)).TrimEnd(), Ellipsis);
            }

            clean.Append(space ? " " : rune.ToString());
            count++;
        }

        return clean.ToString().TrimEnd();
    }

    /// <summary>Shortened with an ellipsis until it is no wider; the ellipsis alone when nothing fits.</summary>
    public static string Fit(string text, double width, double capHeight, bool bold = false)
    {
        if (TextMeasure.Width(text, capHeight, bold) <= width)
        {
            return text;
        }

        double room = width - TextMeasure.Width(Ellipsis, capHeight, bold);
        var used = new RunningWidth(capHeight, bold);
        var kept = new StringBuilder();
        foreach (var rune in text.EnumerateRunes())
        {
            used.Add(rune);
            if (used.Width > room)
            {
                break;
            }

            kept.Append(rune.ToString());
        }

        return kept.ToString().TrimEnd() + Ellipsis;
    }

    // A replacement character stands for an unpaired surrogate.
    private static bool IsDrawn(Rune rune) => rune.Value != 0xFFFD && !HiddenCharacters.IsHidden(rune);
}
