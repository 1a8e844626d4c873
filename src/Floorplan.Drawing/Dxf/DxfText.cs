using System.Globalization;
using System.Text;

namespace Floorplan.Drawing.Dxf;

/// <summary>Any text as the value of a TEXT entity: one line of plain ASCII in which nothing is taken for a code.</summary>
public static class DxfText
{
    private const int Replacement = 0xFFFD;
    private const int MostOfFourDigits = 0xFFFF;

    /// <summary>
    /// What the sheets write, in plain letters or in the codes that R12 has for it: <c>\U+nnnn</c> came later, and not every program
    /// reads it.
    /// </summary>
    private static readonly Dictionary<int, string> Plain = new()
    {
        ['\u00A0'] = " ",
        ['\u00B0'] = "%%d",
        ['\u00B1'] = "%%p",
        ['\u00D8'] = "%%c",
        ['\u00D7'] = "x",
        ['\u00B2'] = "2",
        ['\u00B3'] = "3",
        ['\u2013'] = "-",
        ['\u2014'] = "-",
        ['\u2018'] = "'",
        ['\u2019'] = "'",
        ['\u201C'] = "\"",
        ['\u201D'] = "\"",
        ['\u2026'] = "...",
    };

    /// <summary>
    /// Others than plain ASCII, and the backslash, as <c>\U+nnnn</c>; a caret as caret and space. Two percent signs start a code that
    /// programs escape in different ways, so they are set apart by a space. What is beyond four digits has no code and becomes U+FFFD.
    /// </summary>
    public static string Escape(string text)
    {
        var safe = new StringBuilder(text.Length + 8);
        foreach (var rune in text.EnumerateRunes())
        {
            int c = rune.Value;
            switch (c)
            {
                case < ' ':
                    safe.Append(' ');
                    break;
                case '%':
                    safe.Append(safe.Length > 0 && safe[^1] == '%' ? " %" : "%");
                    break;
                case '^':
                    safe.Append("^ ");
                    break;
                case > '~' when Plain.TryGetValue(c, out string? plain):
                    safe.Append(plain[0] == '%' && safe.Length > 0 && safe[^1] == '%' ? " " : "").Append(plain);
                    break;
                case '\\' or > '~':
                    safe.Append(CultureInfo.InvariantCulture, $"\\U+{(c > MostOfFourDigits ? Replacement : c):X4}");
                    break;
                default:
                    safe.Append((char)c);
                    break;
            }
        }

        return safe.ToString();
    }
}
