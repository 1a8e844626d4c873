using Floorplan.Checks.Findings;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Sizing;

namespace Floorplan.Drawing.Reports;

/// <summary>One page for the owner: does it keep up, what does it need, what is short.</summary>
internal static class OwnerChapter
{
    /// <summary>More findings than these stand on sheet 9; own choice.</summary>
    private const int MostFindings = 12;

    public static ReportChapter Of(PlanFacts facts, IReadOnlyList<Finding> findings) => new(
        "For the owner",
        [
            new ReportText(KeepsUp(facts)),
            new ReportTable(
                "What the unit needs", ["", "What", "How much", "Remark"],
                [
                    .. facts.Sizes.Subjects.SelectMany(s => s.Rows.Select((r, i) => new[]
                    {
                        i == 0 ? s.Name : "", r.What, r.Value, r.Remark,
                    })),
                ]),
            .. Short(findings),
            .. Cautions(facts),
        ]);

    private static string KeepsUp(PlanFacts facts)
    {
        var day = facts.Day;
        if (day.FlatOut is null)
        {
            string missing = string.Join("; ", day.Planned.Needs.Select(n => n.Missing));
            return $"Whether the line keeps up is not known: {missing}.";
        }

        string makes = $"{QuantityText.Coarse(day.Rate)} {day.Planned.Unit}/h";
        return day.KeepsUp
            ? $"The line keeps up: {day.Planned.Asked} are asked for, and it makes {makes}."
            : $"The line does not keep up: {day.Planned.Asked} are asked for, and it makes {makes}.";
    }

    private static IEnumerable<ReportBlock> Short(IReadOnlyList<Finding> findings)
    {
        List<Finding> standing =
        [
            .. findings.Where(f => f.AcceptedBy is null && f.Severity is Severity.Error or Severity.Warning).OrderBy(f => f.Severity),
        ];
        if (standing.Count == 0)
        {
            yield return new ReportText("The check finds no error and no warning.");
            yield break;
        }

        string more = standing.Count > MostFindings
            ? FormattableString.Invariant($" The first {MostFindings} of {standing.Count}; sheet 9 has all.")
            : "";
        yield return new ReportTable(
            "What is wrong or short." + more, ["", "Found", "What would mend it"],
            [
                .. standing.Take(MostFindings).Select(f => new[]
                {
                    f.Severity == Severity.Error ? "error" : "warning", f.Message, f.Mend,
                }),
            ]);
    }

    private static IEnumerable<ReportBlock> Cautions(PlanFacts facts)
    {
        yield return new ReportText(
            "These figures are for planning. Local codes, the authority having jurisdiction and licensed trades prevail.", IsCaution: true);
        foreach (string caution in facts.Sizes.Subjects.SelectMany(s => s.Cautions).Distinct())
        {
            yield return new ReportText(caution, IsCaution: true);
        }
    }
}
