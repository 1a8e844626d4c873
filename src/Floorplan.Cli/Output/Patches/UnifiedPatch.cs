using System.Globalization;
using System.Text;

namespace Floorplan.Cli.Output.Patches;

/// <summary>
/// The change of a text as <c>patch</c> reads it: POSIX.1-2024, utility diff, "Diff -u or -U Output Format". The line ends of the text are
/// in it as they are.
/// </summary>
internal static class UnifiedPatch
{
    /// <summary>Unchanged lines round a change, as usual.</summary>
    private const int Context = 3;

    /// <returns>Empty when nothing differs.</returns>
    public static string Of(string name, string before, string after)
    {
        var lines = LineDifference.Of(Lines(before), Lines(after));
        var text = new StringBuilder();
        int old = 0;
        int now = 0;
        for (int at = 0; at < lines.Count;)
        {
            int change = NextChange(lines, at);
            if (change == lines.Count)
            {
                break;
            }

            int from = Math.Max(at, change - Context);
            int to = End(lines, change);
            text.Append(text.Length == 0 ? $"--- {name}\n+++ {name}\n" : "");
            (old, now) = (old + from - at, now + from - at);
            var hunk = lines.Skip(from).Take(to - from).ToList();
            int gone = hunk.Count(l => l.Sign != '+');
            int come = hunk.Count(l => l.Sign != '-');
            text.Append(CultureInfo.InvariantCulture, $"@@ -{Range(old, gone)} +{Range(now, come)} @@\n");
            foreach (var (sign, line) in hunk)
            {
                text.Append(sign).Append(line).Append(line.EndsWith('\n') ? "" : "\n\\ No newline at end of file\n");
            }

            (old, now, at) = (old + gone, now + come, to);
        }

        return text.ToString();
    }

    /// <summary>Where the hunk of a change ends: after its last change that another follows within the context of both.</summary>
    private static int End(IReadOnlyList<(char Sign, string Line)> lines, int change)
    {
        int last = change;
        for (int next = change; next < lines.Count && next - last <= Context * 2; next = NextChange(lines, next + 1))
        {
            last = next;
        }

        return Math.Min(lines.Count, last + 1 + Context);
    }

    private static int NextChange(IReadOnlyList<(char Sign, string Line)> lines, int from)
    {
        while (from < lines.Count && lines[from].Sign == ' ')
        {
            from++;
        }

        return from;
    }

    /// <summary>The first line from 1 and how many; of no lines the line before.</summary>
    private static string Range(int before, int count) => FormattableString.Invariant($"{(count == 0 ? before : before + 1)},{count}");

    /// <summary>With their line ends; only LF ends a line for <c>patch</c>.</summary>
    private static List<string> Lines(string text)
    {
        var lines = new List<string>();
        for (int at = 0; at < text.Length;)
        {
            int end = text.IndexOf('\n', at);
            end = end < 0 ? text.Length : end + 1;
            lines.Add(text[at..end]);
            at = end;
        }

        return lines;
    }
}
