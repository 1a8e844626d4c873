using Floorplan.Sizing.Sizes;

namespace Floorplan.Drawing.Reports;

/// <summary>One subject: its answers, schedules, cautions and every working.</summary>
internal static class SubjectChapter
{
    public static ReportChapter Of(SizedSubject subject) => new(
        subject.Name,
        [
            new ReportTable("", ["What", "How much", "Remark"], [.. subject.Rows.Select(r => new[] { r.What, r.Value, r.Remark })]),
            .. subject.Tables.Where(t => t.Rows.Count > 0).Select(t => new ReportTable(t.Title, t.Heads, t.Rows)),
            .. subject.Cautions.Select(c => new ReportText(c, IsCaution: true)),
            .. subject.Figures.Count > 0 ? [new ReportHeading("Working")] : Array.Empty<ReportBlock>(),
            .. subject.Figures.Distinct().Select(f => new ReportWorking(f)),
        ]);
}
