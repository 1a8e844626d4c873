using System.Globalization;
using System.Text;

namespace Floorplan.Language.Text;

/// <summary>
/// Characters that do not show, or that make text read other than it is: control, format and direction-changing characters, private and
/// unassigned ones, and halves of a pair. Each that puts text before people decides what to do with them; what they are is said here alone.
/// </summary>
public static class HiddenCharacters
{
    public static bool IsHidden(Rune rune) => Rune.GetUnicodeCategory(rune) is
        UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator
        or UnicodeCategory.PrivateUse or UnicodeCategory.Surrogate or UnicodeCategory.OtherNotAssigned;

    /// <summary>The first one as <c>U+202E</c>, or null.</summary>
    public static string? FirstOf(string text)
    {
        foreach (var (start, _, hidden) in Pieces(text))
        {
            if (hidden)
            {
                return string.Create(CultureInfo.InvariantCulture, $"U+{(int)text[start]:X4}");
            }
        }

        return null;
    }

    /// <summary>With spaces for them, one for one, so that columns stay true and a console cannot be steered.</summary>
    public static string Blanked(string text)
    {
        var clean = new StringBuilder(text.Length);
        foreach (var (start, length, hidden) in Pieces(text))
        {
            clean.Append(hidden ? new string(' ', length) : text.Substring(start, length));
        }

        return clean.ToString();
    }

    private static IEnumerable<(int Start, int Length, bool Hidden)> Pieces(string text)
    {
        for (int i = 0; i < text.Length;)
        {
            bool whole = Rune.TryGetRuneAt(text, i, out var rune);
            int length = whole ? rune.Utf16SequenceLength : 1;
            yield return (i, length, !whole || IsHidden(rune));
            i += length;
        }
    }
}
