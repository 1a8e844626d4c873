using System.Globalization;
using System.Text.RegularExpressions;
using Floorplan.Checks.Findings;
using Floorplan.Language.Quantities;
using Floorplan.Language.Text;
using Floorplan.Model;

namespace Floorplan.Checks.Mending;

/// <summary>
/// The small changes of a text that may mend a finding: a thing of the finding set a little farther along its wall, the words that it
/// lacks, other words in place of some, or the line that the finding itself proposes. Whether one does is for
/// <see cref="Mender"/> to prove.
/// </summary>
internal static partial class Changes
{
    /// <summary>Steps tried each way, and their size: 50 mm or 2 in. Own choice.</summary>
    private const int Steps = 24;
    private const double MetricStep = 50;
    private const double FeetStep = 2 * InchPound.MillimetresPerInch;

    /// <summary>Words are tried before moves.</summary>
    private const double OfWords = 1;

    public static IEnumerable<TextChange> For(Plan plan, Finding finding)
    {
        string text = plan.Source.Content;
        var changes = new List<TextChange>();
        if (finding.NewLine is { } line)
        {
            string end = LineEnds.Of(text);
            string ended = text.Length == 0 || LineEnds.IsLast(text, text.Length - 1) ? "" : end;
            changes.Add(new TextChange(text.Length, 0, ended + line + end, OfWords));
        }

        if (finding.Swap is { } swap && finding.Span.Source == plan.Source)
        {
            changes.AddRange(Swapped(text, finding.Span.Start, swap));
        }

        foreach (var span in Spans(plan, finding))
        {
            int end = BlockEnd(text, span.Start);
            if (finding.NewWords is { } words)
            {
                changes.Add(new TextChange(span.End, 0, ", " + words, OfWords));
            }

            foreach (Match match in Offset().Matches(text[span.Start..end]))
            {
                changes.AddRange(Moves(match, span.Start, plan.Units));
            }
        }

        return changes.OrderBy(c => c.Size).ThenBy(c => c.Start);
    }

    /// <summary>Where the words stand once in the statement; where they stand twice it is not known which are meant.</summary>
    private static IEnumerable<TextChange> Swapped(string text, int start, WordSwap swap)
    {
        string words = string.Join(@"[ \t]*", swap.Old.Split(' ').Select(Regex.Escape));
        var matches = Regex.Matches(text[start..BlockEnd(text, start)], $@"(?<![\w.]){words}(?![\w.])");
        return matches.Count == 1 ? [new TextChange(start + matches[0].Index, matches[0].Length, swap.New, OfWords)] : [];
    }

    /// <summary>Statements of the plan's own file that place the things of a finding.</summary>
    private static IEnumerable<SourceSpan> Spans(Plan plan, Finding finding)
    {
        foreach (string thing in finding.Things)
        {
            var span = plan.Stations.FirstOrDefault(s => s.Id == thing)?.Span
                ?? plan.Openings.FirstOrDefault(o => o.Id == thing)?.Span
                ?? plan.Services.FirstOrDefault(s => s.Id == thing)?.Span;
            if (span is { } own && own.Source == plan.Source)
            {
                yield return own;
            }
        }
    }

    /// <summary>A statement reaches to the next line that is not indented.</summary>
    private static int BlockEnd(string text, int start)
    {
        int at = LineEnds.Next(text, start);
        while (LineEnds.After(text, at) is var next && next < text.Length && text[next] is ' ' or '\t')
        {
            at = LineEnds.Next(text, next);
        }

        return at;
    }

    private static IEnumerable<TextChange> Moves(Match match, int start, UnitSystem units)
    {
        var number = match.Groups["number"];
        string unit = match.Groups["unit"].Value;
        double each = unit switch
        {
            "mm" => 1,
            "cm" => 10,
            "m" => 1000,
            "in" => InchPound.MillimetresPerInch,
            "ft" => InchPound.MillimetresPerFoot,
            _ => units == UnitSystem.Metric ? 1 : InchPound.MillimetresPerInch,
        };
        double value = double.Parse(number.Value, CultureInfo.InvariantCulture) * each;
        double step = units == UnitSystem.Metric ? MetricStep : FeetStep;
        for (int k = 1; k <= Steps; k++)
        {
            foreach (int way in (int[])[1, -1])
            {
                double moved = value + (way * k * step);
                if (moved >= 0)
                {
                    yield return new TextChange(start
                        + number.Index, number.Length, (moved / each).ToString("0.###", CultureInfo.InvariantCulture), k * step);
                }
            }
        }
    }

    /// <summary>A plain number that says how far along: <c>12 in from west</c>, <c>gap 100</c>.</summary>
    [GeneratedRegex(
        @"(?<![\w./'""-])(?<number>-?\d{1,6}(?:\.\d{1,3})?)(?: ?(?<unit>mm|cm|m|in|ft))? from (?:north|south|east|west)\b"
        + @"|\bgap (?<number>-?\d{1,6}(?:\.\d{1,3})?)(?: ?(?<unit>mm|cm|m|in|ft))?(?=\s|,|$)")]
    private static partial Regex Offset();
}
