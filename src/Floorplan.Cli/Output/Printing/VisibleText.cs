using System.Globalization;
using System.Text;
using Floorplan.Language.Text;

namespace Floorplan.Cli.Output.Printing;

/// <summary>
/// Text of a plan as it may be printed: characters that steer a terminal, turn the reading direction or cannot be seen
/// are shown by their number, <c>\u{202E}</c>; a tab becomes one space.
/// </summary>
internal static class VisibleText
{
    public static string Of(string text)
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
            else if (HiddenCharacters.IsHidden(rune))
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
}
