namespace Floorplan.Language.Text;

/// <summary>Lines end with LF, with CR LF, or with CR alone, in one text as they come.</summary>
public static class LineEnds
{
    /// <summary>Whether a line ends with this character: the one of CR, or the last of CR LF.</summary>
    public static bool IsLast(string text, int at)
        => text[at] == '\n' || (text[at] == '\r' && (at + 1 == text.Length || text[at + 1] != '\n'));

    /// <summary>The line end that a text uses first, for a line that is added to it; LF when it has none.</summary>
    public static string Of(string text)
    {
        int at = text.AsSpan().IndexOfAny('\r', '\n');
        return at < 0 || text[at] == '\n' ? "\n" : IsLast(text, at) ? "\r" : "\r\n";
    }

    /// <summary>The first line end at or after a place, from its first character; the length of the text when there is none.</summary>
    public static int Next(string text, int from)
    {
        int at = text.AsSpan(from).IndexOfAny('\r', '\n');
        return at < 0 ? text.Length : from + at;
    }

    /// <summary>The first character after the line end that begins here.</summary>
    public static int After(string text, int end) => end >= text.Length ? text.Length : IsLast(text, end) ? end + 1 : end + 2;
}
