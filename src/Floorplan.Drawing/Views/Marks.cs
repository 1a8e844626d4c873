using Floorplan.Drawing.Lettering;

namespace Floorplan.Drawing.Views;

/// <summary>
/// Names of the plan as marks on views. A long one goes on in the next line: shortened, two of them could read the same, and a hole would
/// be cut in the wrong place.
/// </summary>
internal static class Marks
{
    /// <summary>Letters in a line, and names longer than the language has; own choice.</summary>
    private const int LongestLine = 12;
    private const int Longest = 60;

    public static string Of(string id) => SafeText.Clean(id, Longest);

    /// <summary>Broken after a hyphen where one stands in the second half of a line.</summary>
    public static IReadOnlyList<string> Lines(string mark)
    {
        var lines = new List<string>();
        string rest = mark;
        while (rest.Length > LongestLine)
        {
            int hyphen = rest.LastIndexOf('-', LongestLine - 1);
            int end = hyphen >= LongestLine / 2 ? hyphen + 1 : LongestLine - (char.IsHighSurrogate(rest[LongestLine - 1]) ? 1 : 0);
            lines.Add(rest[..end]);
            rest = rest[end..];
        }

        lines.Add(rest);
        return lines;
    }
}
