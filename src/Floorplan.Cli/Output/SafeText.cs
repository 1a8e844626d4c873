using System.Globalization;
using System.Text;

namespace Floorplan.Cli.Output;

/// <summary>
/// Text of a plan as it may be printed: characters that steer a terminal, turn the reading direction or cannot be seen
/// are shown by their number, <c>\u{202E}</c>; a tab becomes one space.
/// </summary>
internal static class SafeText
{
    public static string Visible(string text)
    {
        foreach (char c in text)
        {
            if (c is < ' ' or > '~')
            {
                return Rewrite(text);
            }
        }

        return text;
    }

    private static string Rewrite(string text)
    {
        var safe = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            if (rune.Value == '\t')
            {
                safe.Append(' ');
            }
            else if (IsHidden(rune))
            {
                safe.Append(CultureInfo.InvariantCulture, $"\\u{{{rune.Value:X4}}}");
            }
            else
            {
                safe.Append(rune.ToString());
            }
        }

        return safe.ToString();
    }

    private static bool IsHidden(Rune rune) => Rune.GetUnicodeCategory(rune) is
        UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator
        or UnicodeCategory.PrivateUse or UnicodeCategory.Surrogate or UnicodeCategory.OtherNotAssigned;
}
