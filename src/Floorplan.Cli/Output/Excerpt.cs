using System.Globalization;
using Floorplan.Language.Text;

namespace Floorplan.Cli.Output;

/// <summary>The line of a plan that something is said about, with the place underlined.</summary>
internal static class Excerpt
{
    // A line of a hostile file may be very long; what is far from the place is cut. Our own choice.
    private const int MostBefore = 100;
    private const int MostOfSpan = 80;
    private const int MostAfter = 60;
    private const string Cut = "…";

    public static void Write(Page page, SourceSpan span, Tone tone)
    {
        var position = span.Position;
        string line = span.Source.Line(position.Line);
        int from = Math.Min(position.Column - 1, line.Length);
        int to = Math.Clamp(from + span.Length, from, line.Length);

        string before = SafeText.Visible(line[..from]);
        string inside = SafeText.Visible(line[from..to]);
        string after = SafeText.Visible(line[to..]);
        before = before.Length > MostBefore ? Cut + before[^MostBefore..] : before;
        inside = inside.Length > MostOfSpan ? inside[..MostOfSpan] + Cut : inside;
        after = after.Length > MostAfter ? after[..MostAfter] + Cut : after;

        string number = position.Line.ToString(CultureInfo.InvariantCulture).PadLeft(5);
        page.Line(new Piece($"{number} | ", Tone.Quiet), before + inside + after);
        page.Line(new Piece($"{"",5} | ", Tone.Quiet), new string(' ', before.Length), new Piece(new string('^', Math.Max(1, inside.Length)), tone));
    }

    /// <summary><c>file:line:column</c>.</summary>
    public static string Place(SourceSpan span)
    {
        var position = span.Position;
        return string.Create(CultureInfo.InvariantCulture, $"{span.Source.Path}:{position.Line}:{position.Column}");
    }
}
