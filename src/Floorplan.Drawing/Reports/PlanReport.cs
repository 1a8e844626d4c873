using Floorplan.Checks.Findings;
using Floorplan.Drawing.Sheets.TheDay;
using Floorplan.Model;
using Floorplan.Sizing;
using Floorplan.Sizing.Sizes;

namespace Floorplan.Drawing.Reports;

/// <summary>
/// The report of a plan: a page for the owner, the day, every subject with its working, what was taken for given, and what was not said.
/// </summary>
public static class PlanReport
{
    /// <param name="findings">Of the check of the plan.</param>
    public static ReportDocument Of(PlanFacts facts, IReadOnlyList<Finding> findings)
    {
        var plan = facts.Plan;
        var sizes = facts.Sizes;
        return new ReportDocument(
            plan.Head.Title,
            [.. Head(plan.Head)],
            [
                OwnerChapter.Of(facts, findings),
                .. Day(facts),
                .. sizes.Subjects.Select(s => SubjectChapter.Of(s, facts)),
                .. OriginChapter.Of(sizes),
                .. NotSaidChapter(facts, sizes),
            ])
        {
            Source = plan.Source,
        };
    }

    private static IEnumerable<string> Head(PlanHead head)
    {
        if (head.Number.Length > 0)
        {
            yield return "Plan " + head.Number;
        }

        if (head.Revisions.LastOrDefault() is { } revision)
        {
            yield return $"Revision {revision.Mark} {revision.Date} {revision.Text}".TrimEnd();
        }

        if (head.Owner.Length > 0)
        {
            yield return "Owner: " + head.Owner;
        }

        if (head.Site.Length > 0)
        {
            yield return "Site: " + head.Site;
        }
    }

    private static IEnumerable<ReportChapter> Day(PlanFacts facts)
    {
        if (facts.Day.Planned.Line is null)
        {
            yield break;
        }

        yield return new ReportChapter("The day", [.. DayChapter.Blocks(facts), new ReportPicture(DayPicture.Draw(facts))]);
    }

    private static IEnumerable<ReportChapter> NotSaidChapter(PlanFacts facts, PlanSizes sizes)
    {
        List<IReadOnlyList<string>> rows =
        [
            .. facts.Day.Planned.Needs.Select(n => new[] { n.Missing, n.Write }),
            .. sizes.Subjects.SelectMany(s => s.Missing).Select(m => new[] { m.What, m.Quoted }).DistinctBy(r => r[0] + r[1]),
        ];
        if (rows.Count > 0)
        {
            yield return new ReportChapter(
                "What the plan does not say",
                [
                    new ReportText(
                        "These figures are missing, so something above is not there or is a guess. Write them in the plan and make the "
                            + "report again."),
                    new ReportTable("", ["Not said", "What to write"], rows),
                ]);
        }
    }
}
