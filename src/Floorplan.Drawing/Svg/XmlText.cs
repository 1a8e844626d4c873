using System.Buffers;
using System.Text;

namespace Floorplan.Drawing.Svg;

/// <summary>Makes any text safe inside XML: markup is escaped, characters that XML 1.0 cannot hold are dropped.</summary>
public static class XmlText
{
    private static readonly SearchValues<char> Plain =
        SearchValues.Create("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789 -.,:;/()%+*=#_|~");

    public static string Escape(string text)
    {
        if (text.AsSpan().IndexOfAnyExcept(Plain) < 0)
        {
            return text;
        }

        var safe = new StringBuilder(text.Length + 8);
        foreach (var rune in text.EnumerateRunes())
        {
            switch (rune.Value)
            {
                case '&':
                    safe.Append("&amp;");
                    break;
                case '<':
                    safe.Append("&lt;");
                    break;
                case '>':
                    safe.Append("&gt;");
                    break;
                case '"':
                    safe.Append("&quot;");
                    break;
                case '\'':
                    safe.Append("&#39;");
                    break;
                case 0xFFFE or 0xFFFF or (< 0x20 and not ('\t' or '\n' or '\r')) or (>= 0x7F and < 0xA0):
                    break;
                default:
                    safe.Append(rune.ToString());
                    break;
            }
        }

        return safe.ToString();
    }
}
