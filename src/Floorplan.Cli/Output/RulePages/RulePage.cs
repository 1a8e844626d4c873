using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Language.Diagnostics;

namespace Floorplan.Cli.Output.RulePages;

/// <summary>The page of one rule, taken from the rule itself; the console and the gallery print the same page.</summary>
/// <param name="Title">The rule's name.</param>
internal sealed record RulePage(string Title, IReadOnlyList<RulePage.Section> Sections)
{
    /// <summary>Heading of the plan that has the fault.</summary>
    public const string Fault = "With the fault";

    /// <summary>Heading of the lines that are changed in that plan to mend it.</summary>
    public const string Mended = "Mended by these lines";

    public const string Related = "Related rules";

    private const string Authority = "Laws differ and change: confirm with the authority having jurisdiction.";

    /// <param name="IsPlan">Whether the lines are plan text, or changes of it, to be kept as they are.</param>
    internal sealed record Section(string Heading, IReadOnlyList<string> Lines, bool IsPlan = false);

    public static RulePage Of(Rule rule)
    {
        var sections = new List<Section>
        {
            new("What it finds", [rule.Says]),
            new("Why it matters", [rule.Why]),
            new("What mends it", [rule.Mend]),
        };
        if (rule.Limits.Count > 0)
        {
            sections.Add(new("Limits", [.. rule.Limits.Select(Limit), Settable(rule)]));
        }

        sections.Add(new("Sources", [.. rule.Sources.Select(s => s.Text), Authority]));
        if (rule.Caution is { } caution)
        {
            sections.Add(new("Caution", [caution]));
        }

        if (RelatedRules.Of(rule) is { Count: > 0 } related)
        {
            sections.Add(new(Related, [.. related.Select(r => r.Name)]));
        }

        sections.Add(new(Fault, rule.Bad.TrimEnd().Split('\n'), IsPlan: true));
        sections.Add(new(Mended, [.. rule.Mended.SelectMany(c => Change(rule.Bad, c))], IsPlan: true));
        return new RulePage(rule.Name, sections);
    }

    private static IEnumerable<string> Change(string plan, LineChange change)
    {
        if (change.TakenFrom(plan) is not { } line)
        {
            return change.Brings.Select(l => "new   " + l);
        }

        return change.Brings.Count == 0 ? ["gone  " + line] : change.Brings.Select(l => "now   " + l).Prepend("was   " + line);
    }

    private static string Limit(RuleLimit limit)
        => $"{limit.Key}: {LimitFigure.Value(limit)}, {LimitFigure.Scope(limit)}, {DiagnosticText.Word(LimitFigure.Weight(limit))} "
            + $"({LimitFigure.Kind(limit.Source.Force)}: {limit.Source.Text})";

    private static string Settable(Rule rule) => $"A plan sets its own with: limit {rule.Name} VALUE \"reason\"";
}
