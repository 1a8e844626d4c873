using System.Text.RegularExpressions;

namespace Floorplan.Tests.Checks.Corpus;

/// <summary>One change of a plan's text, as slips.txt writes it. A change that does not fit its plan is our mistake.</summary>
internal static class TextChange
{
    public static string Apply(string plan, string text, string change) => change switch
    {
        "mirror" => Regex.Replace(text, @"\b(north|south)\b", m => m.Value == "north" ? "south" : "north"),
        ['~', ' ', .. var swap] => Swapped(plan, text, swap, once: true),
        ['*', ' ', .. var swap] => Swapped(plan, text, swap, once: false),
        ['+', ' ', .. var line] => text.TrimEnd('\n') + "\n" + line + "\n",
        ['-', ' ', .. var start] => Without(plan, text, start),
        ['>', ' ', .. var after] => Inserted(plan, text, after),
        _ => throw new InvalidDataException($"{plan}: `{change}` is no change"),
    };

    private static string Swapped(string plan, string text, string swap, bool once)
    {
        int arrow = swap.IndexOf(" =>", StringComparison.Ordinal);
        string old = Unescaped(swap[..arrow]);
        string other = Unescaped(arrow + 4 <= swap.Length ? swap[(arrow + 4)..] : "");
        int found = Regex.Count(text, Regex.Escape(old));
        return found == 0 || (once && found > 1)
            ? throw new InvalidDataException($"{plan}: `{old}` stands there {found} times")
            : text.Replace(old, other, StringComparison.Ordinal);
    }

    private static string Without(string plan, string text, string start)
    {
        var lines = text.Split('\n').ToList();
        int at = LineOf(plan, lines, start);
        int details = lines.Skip(at + 1).TakeWhile(l => l.Trim().Length > 0 && Indent(l) > Indent(lines[at])).Count();
        lines.RemoveRange(at, 1 + details);
        return string.Join('\n', lines);
    }

    private static string Inserted(string plan, string text, string after)
    {
        string[] parts = after.Split(" | ", 2);
        var lines = text.Split('\n').ToList();
        lines.Insert(LineOf(plan, lines, parts[0]) + 1, parts[1]);
        return string.Join('\n', lines);
    }

    private static int LineOf(string plan, List<string> lines, string start)
    {
        var found = lines.Index().Where(l => l.Item.TrimStart().StartsWith(start, StringComparison.Ordinal)).ToList();
        return found.Count == 1 ? found[0].Index : throw new InvalidDataException($"{plan}: {found.Count} lines start with `{start}`");
    }

    private static int Indent(string line) => line.Length - line.TrimStart().Length;

    private static string Unescaped(string text) => text.Replace("\\n", "\n", StringComparison.Ordinal);
}
