using Floorplan.Cli.Output.Printing;
using Floorplan.Drawing.Reports;
using Floorplan.Model;
using Floorplan.Sizing.Sizes;
using Floorplan.Sizing.Working;

namespace Floorplan.Cli.Output.Sizes;

/// <summary>What <c>size --working</c> prints: every figure, so that a person can follow it with a calculator.</summary>
internal static class WorkingPages
{
    public static void Write(Page page, Plan plan, PlanSizes sizes)
    {
        page.Heading(plan.Head.Title);
        foreach (var subject in sizes.Subjects)
        {
            page.Gap();
            page.Heading(subject.Name);
            foreach (var figure in subject.Figures)
            {
                Write(page, plan, figure);
            }

            foreach (var table in subject.Tables)
            {
                Write(page, table);
            }

            foreach (var missing in subject.Missing)
            {
                page.Line(new Piece($"not said: {missing.What}; write {missing.Quoted}", Tone.Warning));
            }
        }

        page.Gap();
        foreach (string caution in SizeText.Cautions(sizes))
        {
            page.Prose(caution);
        }
    }

    private static void Write(Page page, Plan plan, Figure figure)
    {
        page.Line(new Piece($"{WorkingWords.Name(figure)} = {figure.Text}", Tone.Strong));
        page.Line($"  {figure.Formula}");
        page.Line($"  = {figure.Substituted}");
        foreach (var input in figure.Inputs)
        {
            page.Line("    " + WorkingWords.Of(input, plan.Source));
        }

        page.Line($"  by {figure.Source.Text}");
    }

    private static void Write(Page page, SizeTable table)
    {
        page.Gap();
        page.Heading(table.Title);
        var columns = new TextColumns([.. table.Heads]) { Words = true };
        foreach (var row in table.Rows)
        {
            columns.Add([.. row]);
        }

        columns.Print(page);
    }
}
