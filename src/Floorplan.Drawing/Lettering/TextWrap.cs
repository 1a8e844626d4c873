using Floorplan.Language.Quantities;

namespace Floorplan.Drawing.Lettering;

/// <summary>Breaks text into lines that fit a width.</summary>
public static class TextWrap
{
    /// <summary>
    /// A name longer than this in letters may be broken after its hyphens, a shorter one only where it finds no room whole; own
    /// choice.
    /// </summary>
    private const int LongWord = 12;

    /// <summary>As sheets write them, besides those that plans are written in.</summary>
    private static readonly HashSet<string> DrawnUnits = ["mm", "m", "ft", "m²", "m³", "sq", "cu", "°C", "°F"];

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

    /// <summary>The parts of a text that stay whole: words, and pieces of long names up to each hyphen.</summary>
    public static IEnumerable<string> Pieces(string text)
    {
        foreach (string word in text.Split(' '))
        {
            int from = 0;
            for (int i = 1; i + 1 < word.Length; i++)
            {
                if (word.Length > LongWord && IsSoftHyphen(word, i))
                {
                    yield return word[from..(i + 1)];
                    from = i + 1;
                }
            }

            yield return word[from..];
        }
    }

    /// <summary>Behind two letters, so not the one between feet and inches.</summary>
    private static bool IsSoftHyphen(string text, int at)
        => text[at] == '-' && at > 1 && char.IsLetter(text[at - 1]) && char.IsLetter(text[at - 2]);

    /// <summary>A figure is not split from the unit after it while there is another place to break.</summary>
    private static bool IsBeforeUnit(string text, int at)
    {
        int end = text.IndexOf(' ', at + 1);
        string next = text[(at + 1)..(end < 0 ? text.Length : end)].TrimEnd(',', '.', ';', ':', ')');
        return at > 0 && char.IsDigit(text[at - 1])
            && (DrawnUnits.Contains(next) || IsThousands(next) || UnitTable.Find(next) is not null);
    }

    /// <summary>The last three figures of a number such as 30 480.</summary>
    private static bool IsThousands(string next) => next.Length == 3 && next.All(char.IsAsciiDigit);

    private static bool InLongWord(string text, int at)
    {
        int end = text.IndexOf(' ', at);
        return (end < 0 ? text.Length : end) - (text.LastIndexOf(' ', at) + 1) > LongWord;
    }

    private static int LineEnd(string text, double width, double capHeight, bool bold)
    {
        var at = 0;
        var lastBreak = 0;
        var lastResort = 0;
        var used = new RunningWidth(capHeight, bold);
        foreach (var rune in text.EnumerateRunes())
        {
            used.Add(rune);
            if (rune.Value == ' ')
            {
                lastResort = at;
                lastBreak = IsBeforeUnit(text, at) ? lastBreak : at;
            }

            if (used.Width > width && rune.Value != ' ')
            {
                // A first character wider than the column still has to go somewhere.
                return lastBreak > 0 ? lastBreak : lastResort > 0 ? lastResort : Math.Max(at, rune.Utf16SequenceLength);
            }

            if (rune.Value == '-' && IsSoftHyphen(text, at))
            {
                lastResort = at + 1;
                lastBreak = InLongWord(text, at) ? lastResort : lastBreak;
            }

            at += rune.Utf16SequenceLength;
        }

        return text.Length;
    }
}
