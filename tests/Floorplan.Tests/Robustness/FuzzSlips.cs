using System.Globalization;
using System.Text.RegularExpressions;

namespace Floorplan.Tests.Robustness;

/// <summary>
/// Slips that leave a plan readable, so that the later stages are tried: figures alone, swapped lines, and things that stand elsewhere. A
/// random mutation seldom binds; these mostly do.
/// </summary>
internal static partial class FuzzSlips
{
    private const int MostFigures = 8;

    public static string Make(Random random, string text) => random.Next(3) switch
    {
        0 => Figures(random, text),
        1 => SwappedLines(random, text),
        _ => MovedThings(random, text),
    };

    /// <summary>Some figures, each made a little or much larger or smaller, or taken from another place of the text.</summary>
    private static string Figures(Random random, string text)
    {
        var all = FigurePattern().Matches(text);
        if (all.Count == 0)
        {
            return text;
        }

        var chosen = Enumerable.Range(0, 1 + random.Next(MostFigures)).Select(_ => random.Next(all.Count)).ToHashSet();
        int at = 0;
        return FigurePattern().Replace(
            text, m => chosen.Contains(at++) ? Slip(random, m.Value, all[random.Next(all.Count)].Value) : m.Value);
    }

    private static string Slip(Random random, string figure, string other)
    {
        decimal value = decimal.Parse(figure, CultureInfo.InvariantCulture);
        return random.Next(6) switch
        {
            0 => other,
            1 => figure + "0",
            2 => (value / 10).ToString(CultureInfo.InvariantCulture),
            3 => "0",
            _ => Math.Max(0, Math.Round(value * (decimal)(0.5 + random.NextDouble()), 1)).ToString(CultureInfo.InvariantCulture),
        };
    }

    private static string SwappedLines(Random random, string text)
    {
        string[] lines = text.Split('\n');
        for (int i = random.Next(3); i >= 0; i--)
        {
            int one = random.Next(lines.Length), two = random.Next(lines.Length);
            (lines[one], lines[two]) = (lines[two], lines[one]);
        }

        return string.Join('\n', lines);
    }

    /// <summary>The places of two things are swapped, or many things get one thing's place, so that they lie in each other.</summary>
    private static string MovedThings(Random random, string text)
    {
        string[] lines = text.Split('\n');
        int[] places =
            [.. lines.Index().Where(l => l.Item.TrimStart().StartsWith("place ", StringComparison.Ordinal)).Select(l => l.Index)];
        if (places.Length < 2)
        {
            return Figures(random, text);
        }

        int from = places[random.Next(places.Length)];
        foreach (int to in places.Where(_ => random.Next(3) == 0))
        {
            (lines[to], lines[from]) = random.Next(2) == 0 ? (lines[from], lines[to]) : (lines[from], lines[from]);
        }

        return string.Join('\n', lines);
    }

    [GeneratedRegex(@"(?<![\w#.\-""])[0-9]+(\.[0-9]+)?(?![\w.""])")]
    private static partial Regex FigurePattern();
}
