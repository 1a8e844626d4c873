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
        int line =
            LineAt(text, adds
                ? before.Length + change.Words.IndexOf(change.Words.TrimStart('\n'), StringComparison.Ordinal)
                : change.Start);
        return new Proposal(change, line, adds ? "" : LineOf(before, line), LineOf(text, line), text);
    }

    private static int LineAt(string text, int at) => text.AsSpan(0, at).Count('\n') + 1;

    private static string LineOf(string text, int number) => text.Split('\n').ElementAtOrDefault(number - 1)?.TrimEnd('\r') ?? "";
}
