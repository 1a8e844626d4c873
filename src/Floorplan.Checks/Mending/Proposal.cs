using Floorplan.Language.Text;

namespace Floorplan.Checks.Mending;

/// <summary>
/// One change of a plan's text that mends one finding and makes no other worse; proven by checking the changed text whole.
/// </summary>
/// <param name="Line">Of the changed or the new line, from 1.</param>
/// <param name="Before">The line as it stands; empty when a line is added.</param>
/// <param name="After">The line as proposed.</param>
/// <param name="Text">The whole text with the change made.</param>
public sealed record Proposal(TextChange Change, int Line, string Before, string After, string Text)
{
    internal static Proposal Of(string before, TextChange change)
    {
        string text = change.Apply(before);
        bool adds = change.Start == before.Length;
        var changed = new SourceText(text, "");
        int ends = change.Words.Length - change.Words.TrimStart('\r', '\n').Length;
        int line = changed.PositionOf(adds ? before.Length + ends : change.Start).Line;
        return new Proposal(change, line, adds ? "" : new SourceText(before, "").Line(line), changed.Line(line), text);
    }
}
