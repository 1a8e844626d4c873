using Floorplan.Sizing.Sizes;
using Floorplan.Sizing.Working;

namespace Floorplan.Drawing.Reports;

/// <summary>What was taken because the plan does not say it, and where each formula and figure comes from.</summary>
internal static class OriginChapter
{
    public static IEnumerable<ReportChapter> Of(PlanSizes sizes)
    {
        var figures = sizes.Figures.ToList();
        if (figures.Count == 0)
        {
            yield break;
        }

        List<IReadOnlyList<string>> taken =
        [
            .. figures.SelectMany(f => f.Inputs).Where(i => i.Source is not null).Select(i => (i.Name, i.Text, Source: i.Source!.Text))
                .Distinct().Select(i => new[] { i.Name, i.Text, i.Source }),
        ];
        yield return new ReportChapter(
            "Assumptions and sources",
            [
                new ReportText(
                    "Taken where the plan does not say it. What is an own assumption is ours: write your own figure where you know it."),
                .. taken.Count > 0 ? [new ReportTable("Taken", ["What", "How much", "From"], taken)] : Array.Empty<ReportBlock>(),
                new ReportTable(
                    "Formulas", ["Source", "How it is known"],
                    [.. figures.Select(f => f.Source).Distinct().Select(s => new[] { s.Title, Known(s.Confirmed) })]),
            ]);
    }

    private static string Known(Origin origin) => origin switch
    {
        Origin.FoundInPublicCopy => "read in a public copy",
        Origin.FoundInSecondaryCopy => "read in a secondary copy, not compared with the printed text",
        Origin.CommonPractice => "common practice, no source",
        Origin.OwnAssumption => "own assumption",
        _ => "from memory, not compared with the printed text",
    };
}
