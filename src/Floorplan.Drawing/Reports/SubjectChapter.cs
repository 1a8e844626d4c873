using Floorplan.Sizing;
using Floorplan.Sizing.Sizes;

namespace Floorplan.Drawing.Reports;

/// <summary>One subject: its answers, schedules, cautions and every working.</summary>
internal static class SubjectChapter
{
    public static ReportChapter Of(SizedSubject subject, PlanFacts facts) => new(
        subject.Name,
        [
            new ReportTable("", ["What", "How much", "Remark"], [.. subject.Rows.Select(r => new[] { r.What, r.Value, r.Remark })]),
            .. subject.Tables.Where(t => t.Rows.Count > 0).Select(t => new ReportTable(t.Title, t.Heads, t.Rows)),
            .. subject.Swings.Count > 0 ? [new ReportPicture(SwingPicture.Draw(subject, facts.Plan.Units))] : Array.Empty<ReportBlock>(),
            .. ReferenceEquals(subject, facts.WeightSizes) && facts.CraneLifts.Count > 0
                ? [new ReportPicture(LiftPicture.Draw(facts.CraneLifts, facts.Plan.Shell, facts.Plan.Units))]
                : Array.Empty<ReportBlock>(),
            .. subject.Cautions.Select(c => new ReportText(c, IsCaution: true)),
            .. subject.Figures.Count > 0 ? [new ReportHeading("Working")] : Array.Empty<ReportBlock>(),
            .. subject.Figures.Distinct().Select(f => new ReportWorking(f)),
        ]);
}
