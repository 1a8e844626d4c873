using System.Text;
using System.Text.RegularExpressions;
using Floorplan.Checks.Framework;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Sizing.Simulation;

namespace Floorplan.Tests.Robustness;

/// <summary>Makes the text of one fuzz case from its number alone, so that a failing case can be made again.</summary>
internal static partial class FuzzInput
{
    private static readonly string[] Hostile =
    [
        "", "\0", "\r", "\u2028", "\uFEFF", "\u202E", "\u001b[2J", "\"", "\"\"", "#", ",", "->", "-", ":", "'", "½", "″", "\u00A0",
        "\uD83D\uDC1F", "\uD800",
        "0", "-1", "-0", "00000001", "0.0000001", "1e9", "1e400", "NaN", "99999999999999999999999999", "1000001", "999999", "0 x 0 x 0",
        "1/0", "8'-6 99/0\"",
        "9223372036854775807", "0 mm", "1 km", "100 %", "0 %", "5000 C", "1 nm", "outside", "../../etc/passwd", "/dev/zero", "kinds from",
        "like", "kind", "parts/fish", "parts/../..",
    ];

    private static readonly string[] Seeds = [.. FindSeeds()];

    private static readonly string[] Words =
        [.. Seeds.SelectMany(s => WordPattern().Matches(s).Select(m => m.Value)).Distinct().Order(StringComparer.Ordinal)];

    public static string Make(int number)
    {
        var random = new Random(number);
        return random.Next(20) switch
        {
            0 => Noise(random),
            1 => WordSalad(random),
            < 8 => FuzzSlips.Make(random, Seeds[random.Next(Seeds.Length)]),
            _ => Mutate(random, Seeds[random.Next(Seeds.Length)]),
        };
    }

    /// <summary>Whole plans that work, spread over the language: templates, examples of the rules, examples of the guide,
    /// and all that a day may say.</summary>
    private static IEnumerable<string> FindSeeds()
    {
        var templates = Directory.EnumerateFiles(Repository.At("templates"), "*.unit").Order(StringComparer.Ordinal)
            .Select(File.ReadAllText);
        var examples = RuleCatalogue.All.SelectMany(r => new[] { r.Bad, r.Good });
        string guide = Repository.At("templates", "README.md");
        var fenced = File.Exists(guide) ? FencePattern().Matches(File.ReadAllText(guide)).Select(m => m.Groups[1].Value) : [];
        return templates.Concat(examples).Concat(fenced).Append(FullDay.Text).Append(FullDay.Ways).Append(FullDay.Ways);
    }

    private static string Mutate(Random random, string text)
    {
        int times = 1 + random.Next(4);
        for (int i = 0; i < times; i++)
        {
            text = random.Next(9) switch
            {
                0 => ReplaceMatch(random, text, NumberPattern(), Number(random)),
                1 => ReplaceMatch(random, text, NumberPattern(), Number(random)),
                2 => ReplaceMatch(random, text, WordPattern(), Words[random.Next(Words.Length)]),
                3 => ReplaceMatch(random, text, WordPattern(), Hostile[random.Next(Hostile.Length)]),
                4 => WithLines(text, lines => lines.RemoveAt(random.Next(lines.Count))),
                5 => WithLines(text, lines => lines.Insert(random.Next(lines.Count), lines[random.Next(lines.Count)])),
                6 => WithLines(text, lines => (lines[0], lines[^1]) = (lines[random.Next(lines.Count)], lines[random.Next(lines.Count)])),
                7 => Cut(random, text),
                _ => text.Insert(random.Next(text.Length + 1), Hostile[random.Next(Hostile.Length)]),
            };
        }

        return text;
    }

    private static string Number(Random random) => random.Next(6) switch
    {
        0 => Hostile[random.Next(Hostile.Length)],
        1 => random.Next(10).ToString(System.Globalization.CultureInfo.InvariantCulture),
        2 => random.Next(1_000_000).ToString(System.Globalization.CultureInfo.InvariantCulture),
        _ => random.Next(20_000).ToString(System.Globalization.CultureInfo.InvariantCulture),
    };

    private static string ReplaceMatch(Random random, string text, Regex pattern, string with)
    {
        var matches = pattern.Matches(text);
        if (matches.Count == 0)
        {
            return text;
        }

        var match = matches[random.Next(matches.Count)];
        return string.Concat(text.AsSpan(0, match.Index), with, text.AsSpan(match.Index + match.Length));
    }

    private static string WithLines(string text, Action<List<string>> change)
    {
        var lines = text.Split('\n').ToList();
        change(lines);
        return string.Join('\n', lines);
    }

    private static string Cut(Random random, string text)
    {
        int from = random.Next(text.Length + 1);
        int length = Math.Min(text.Length - from, random.Next(40));
        return text.Remove(from, length);
    }

    private static string WordSalad(Random random)
    {
        var text = new StringBuilder("plan \"x\"\nshell container 20 ft\nroom a dirty from west to east\n");
        for (int i = random.Next(60); i > 0; i--)
        {
            text.Append(random.Next(6) switch { 0 => "\n", 1 => "\n  ", 2 => ", ", _ => " " });
            text.Append(random.Next(12) == 0 ? Hostile[random.Next(Hostile.Length)] : Words[random.Next(Words.Length)]);
        }

        return text.ToString();
    }

    private static string Noise(Random random)
    {
        byte[] bytes = new byte[random.Next(400)];
        random.NextBytes(bytes);
        return random.Next(2) == 0 ? Encoding.Latin1.GetString(bytes) : Encoding.UTF8.GetString(bytes);
    }

    [GeneratedRegex(@"[0-9]+(\.[0-9]+)?")]
    private static partial Regex NumberPattern();

    [GeneratedRegex(@"[^\s,""]+")]
    private static partial Regex WordPattern();

    [GeneratedRegex("```unit\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex FencePattern();
}
