using System.Globalization;
using System.Text;

namespace Floorplan.Drawing.Dxf;

/// <summary>Any text as the value of a TEXT entity: one line of plain ASCII in which nothing is taken for a code.</summary>
public static class DxfText
{
    private const int Replacement = 0xFFFD;
    private const int MostOfFourDigits = 0xFFFF;

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
