using Floorplan.Language.Text;

namespace Floorplan.Language.Diagnostics;

/// <summary>
/// The line of a file that something is said about, in three pieces, so that a console can colour the place. Without colour the
/// place stands between two arrows: <c>line 12: place &gt;&gt;agianst&lt;&lt; north wall</c>. It reads the same aloud, in an e-mail and
/// in any typeface. A whole line needs no arrows.
/// </summary>
/// <param name="Before">With the number of the line.</param>
/// <param name="Place">With its arrows, if it has any.</param>
public sealed record Excerpt(string Before, string Place, string After)
{
    /// <summary>Longer lines are cut round the place; fits a usual console.</summary>
    private const int MostShown = 110;

    private const int ShownBefore = 40;

    public string Text => Before + Place + After;

    /// <summary>Control characters are shown as spaces. A place that goes on in the next line is marked to the end of its first.</summary>
    public static Excerpt Of(SourceSpan span)
    {
        var position = span.Position;
        string line = DiagnosticText.Visible(span.Source.Line(position.Line)).TrimEnd();
        int start = Math.Min(position.Column - 1, line.Length);
        int end = Math.Min(start + span.Length, line.Length);
        int from = line.Length <= MostShown ? 0 : Math.Max(0, Math.Min(start - ShownBefore, line.Length - MostShown));
        int to = Math.Min(line.Length, from + MostShown);
        from -= from > 0 && char.IsLowSurrogate(line[from]) ? 1 : 0;
        to += to < line.Length && char.IsLowSurrogate(line[to]) ? 1 : 0;
        end = Math.Min(end, to);
        string before = from > 0 ? "…" + line[from..start] : line[..start].TrimStart();
        string after = line[end..to] + (to < line.Length ? "…" : "");
        string place = line[start..end];
        if (line.Length == 0)
        {
            return new Excerpt(FormattableString.Invariant($"  line {position.Line}: "), "", "(empty)");
        }

        bool whole = place.Length > 0 && before.Length == 0 && after.Length == 0;
        return new Excerpt(FormattableString.Invariant($"  line {position.Line}: {before}"), whole ? place : $">>{place}<<", after);
    }
}
