using System.Buffers;
using System.Globalization;
using System.Text;

namespace Floorplan.Language.Text;

/// <summary>Bytes to text, strictly: a byte that is not UTF-8 is a mistake with a place, not a question mark.</summary>
public static class Utf8Text
{
    private static ReadOnlySpan<byte> Mark => [0xEF, 0xBB, 0xBF];

    /// <returns>The text without its byte order mark, and whether it had one; or a sentence that says why it is no text.</returns>
    public static (string? Text, bool HasMark, string? Problem) Decode(ReadOnlySpan<byte> bytes)
    {
        if (bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..])
        {
            return (null, false, "this is UTF-16 text; save it as UTF-8");
        }

        if (bytes.Contains((byte)0))
        {
            return (null, false, "this is not a text file, so it is no plan");
        }

        bool hasMark = bytes.StartsWith(Mark);
        var body = hasMark ? bytes[Mark.Length..] : bytes;
        int wrong = FirstWrong(body);
        if (wrong >= 0)
        {
            // What stands before it is UTF-8, so it decodes, and lines are counted as in any other text.
            int line = new SourceText(Encoding.UTF8.GetString(body[..wrong]), "").LineCount;
            return (
                null, hasMark,
                string.Create(
                    CultureInfo.InvariantCulture, $"line {line} is not UTF-8 text (byte 0x{body[wrong]:X2}); save the file as UTF-8"));
        }

        return (Encoding.UTF8.GetString(body), hasMark, null);
    }

    private static int FirstWrong(ReadOnlySpan<byte> bytes)
    {
        int at = 0;
        while (at < bytes.Length)
        {
            if (Rune.DecodeFromUtf8(bytes[at..], out _, out int used) != OperationStatus.Done)
            {
                return at;
            }

            at += used;
        }

        return -1;
    }
}
