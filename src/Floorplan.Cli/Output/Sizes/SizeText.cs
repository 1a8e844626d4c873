using Floorplan.Cli.Output.Printing;
using Floorplan.Model;
using Floorplan.Sizing.Sizes;

namespace Floorplan.Cli.Output.Sizes;

/// <summary>What <c>size</c> prints for people: one screen.</summary>
internal static class SizeText
{
    public static void Write(Page page, Plan plan, PlanSizes sizes)
    {
        page.Heading(plan.Head.Title);
        if (sizes.Subjects.Count == 0)
        {
            page.Line("Nothing to size: the plan has no water, drains, power, cold rooms or weights.");
            return;
        }

        var rows = sizes.Subjects.SelectMany(s => s.Rows).ToList();
        int what = rows.Select(r => r.What.Length).DefaultIfEmpty(0).Max();
        int value = rows.Select(r => r.Value.Length).DefaultIfEmpty(0).Max();
        foreach (var subject in sizes.Subjects)
        {
            page.Heading(subject.Name);
            foreach (var row in subject.Rows)
            {
                page.Line($"  {row.What.PadRight(what)}  {row.Value.PadRight(value)}  {row.Remark}".TrimEnd());
            }

            foreach (var missing in subject.Missing)
            {
                page.Line(new Piece($"  not said: {missing.What}; write {missing.Quoted}", Tone.Warning));
            }
        }

        page.Gap();
        foreach (string caution in Cautions(sizes))
        {
            page.Prose(caution);
        }
    }

    /// <summary>Each once.</summary>
    public static IEnumerable<string> Cautions(PlanSizes sizes) => sizes.Subjects.SelectMany(s => s.Cautions).Distinct();
}
