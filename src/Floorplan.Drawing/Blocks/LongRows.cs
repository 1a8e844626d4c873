namespace Floorplan.Drawing.Blocks;

/// <summary>A row of very many lines becomes several, so that any column holds each of them.</summary>
internal static class LongRows
{
    /// <summary>Own choice: the lowest column on a whole page holds three times as many.</summary>
    private const int MostLines = 12;

    /// <summary>
    /// No text on a sheet is longer, in characters; a plan that says more in one place is not meant for drawing. Own bound.
    /// </summary>
    public const int Longest = 10_000;

    /// <summary>From which line each piece goes to which, for rows of this many lines.</summary>
    public static IEnumerable<Range> Pieces(int lines)
    {
        for (int from = 0; from == 0 || from < lines; from += MostLines)
        {
            yield return from..Math.Min(lines, from + MostLines);
        }
    }

    /// <summary>The lines of one piece; none where this text is shorter than its neighbours.</summary>
    public static IReadOnlyList<string> Of(IReadOnlyList<string> lines, Range piece)
        => lines.Count <= piece.End.Value && piece.Start.Value == 0 ? lines
            : [.. lines.Skip(piece.Start.Value).Take(piece.End.Value - piece.Start.Value)];
}
