using System.Globalization;
using System.Text.RegularExpressions;

namespace Floorplan.Tests.Drawing.Live;

/// <summary>
/// A text that somebody types at: letters in and out, figures changed by one, lines moved, and undone again. The same from the same number.
/// </summary>
internal sealed partial class RandomEdits(string text, int number)
{
    private const string Letters = "abcdexyz0123456789 ,.-#\"\n";

    private readonly Random random = new(number);
    private readonly Stack<string> older = new([text]);

    public string Text => older.Peek();

    /// <summary>The next text.</summary>
    /// <param name="isWrong">The text has mistakes now: it is mostly undone, as a person does, so that most texts are plans.</param>
    public string Next(bool isWrong)
    {
        if (older.Count > 1 && random.Next(100) < (isWrong ? 75 : 10))
        {
            older.Pop();
            return Text;
        }

        older.Push(Changed(Text));
        return Text;
    }

    private string Changed(string now) => random.Next(12) switch
    {
        0 => now.Insert(random.Next(now.Length + 1), Letter()),
        1 => Without(now),
        2 => Without(now).Insert(Math.Min(random.Next(now.Length + 1), now.Length - 1), Letter()),
        3 or 4 or 5 or 6 => At(now, NumberPattern(), Digit),
        7 => At(now, LabelPattern(), m => m.Value[..^1] + Letter().Trim('"', '\n') + "\""),
        8 => At(now, LineEndPattern(), m => " # " + Letter().Trim('\n') + m.Value),
        9 => MovedLine(now),
        10 => At(now, WordPattern(), m => m.Value[1..]),
        _ => At(now, LineEndPattern(), m => "\n" + m.Value),
    };

    private string Letter() => Letters[random.Next(Letters.Length)].ToString();

    private string Without(string now) => now.Length < 2 ? now + "a" : now.Remove(random.Next(now.Length), 1);

    private string Digit(Match m)
    {
        int at = random.Next(m.Length);
        return m.Value[..at] + random.Next(10).ToString(CultureInfo.InvariantCulture) + m.Value[(at + 1)..];
    }

    private string At(string now, Regex pattern, Func<Match, string> make)
    {
        var all = pattern.Matches(now);
        if (all.Count == 0)
        {
            return now + " ";
        }

        var match = all[random.Next(all.Count)];
        return now[..match.Index] + make(match) + now[(match.Index + match.Length)..];
    }

    /// <summary>A whole statement or one line, to another place.</summary>
    private string MovedLine(string now)
    {
        var lines = now.Split('\n').ToList();
        int at = random.Next(lines.Count);
        int count = 1;
        while (at + count < lines.Count && lines[at + count].StartsWith(' ') && !lines[at].StartsWith(' '))
        {
            count++;
        }

        var moved = lines.GetRange(at, count);
        lines.RemoveRange(at, count);
        lines.InsertRange(random.Next(lines.Count + 1), moved);
        return string.Join('\n', lines);
    }

    [GeneratedRegex("[0-9]+")]
    private static partial Regex NumberPattern();

    [GeneratedRegex("\"[^\"\n]*\"")]
    private static partial Regex LabelPattern();

    [GeneratedRegex("\n")]
    private static partial Regex LineEndPattern();

    [GeneratedRegex("[a-z][a-z-]+")]
    private static partial Regex WordPattern();
}
