using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Drawing.Frames;

namespace Floorplan.Drawing.Views.Findings;

/// <summary>A finding with its number in the report, from 1.</summary>
public sealed record MarkedFinding(int Number, Finding Finding)
{
    /// <summary>Plan mm outside the shell up to which a finding is marked in its place; own choice.</summary>
    public const double FarthestOutside = 3000;

    /// <summary>Of some groups of rules only, with their numbers in the whole report.</summary>
    public static IReadOnlyList<MarkedFinding> NumberOf(IReadOnlyList<Finding> findings, params RuleGroup[] groups) =>
        [.. NumberAll(findings).Where(f => groups.Contains(RuleCatalogue.Find(f.Finding.Rule)!.Group))];

    public static IReadOnlyList<MarkedFinding> NumberAll(IReadOnlyList<Finding> findings)
        => [.. findings.Select((f, i) => new MarkedFinding(i + 1, f))];

    public FindingLine Line => new(
        Number,
        Finding.SeverityWord,
        Finding.Message);
}
