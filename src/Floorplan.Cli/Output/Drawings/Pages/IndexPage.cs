using System.Globalization;
using System.Text;
using Floorplan.Cli.Output.Reports;

namespace Floorplan.Cli.Output.Drawings.Pages;

/// <summary>
/// The page <c>index.html</c> beside the files of a drawing: the plan, every finding, every file. Plain HTML, well formed, without
/// script; what comes from a plan is cleaned and escaped, and links are relative, so that the folder can be handed on.
/// </summary>
internal static class IndexPage
{
    public const string Name = "index.html";

    /// <summary>A line that tells it from a page of somebody else.</summary>
    private const string Marker = "<meta name=\"generator\" content=\"floorplan draw\"/>";

    private const int LinesToMarker = 8;

    /// <param name="others">What else the folder holds, drawn by earlier runs.</param>
    public static string Write(IReadOnlyList<DrawnPlan> plans, IReadOnlyList<OtherDrawings> others)
    {
        OtherDrawings[] otherPlans = [.. others.Where(o => plans.All(p => p.Name != o.Plan))];
        bool single = plans.Count + otherPlans.Length == 1;
        string[] titles =
        [
            .. plans.Select(p => PagePlan.TitleOf(p.Examination.Plan!.Head.Title, p.Name)),
            .. otherPlans.Select(o => PagePlan.TitleOf(o.Title, o.Plan)),
        ];
        var html = new StringBuilder();
        Head(html, single ? titles[0] : "Floor plans");
        if (!single)
        {
            html.Append(PageText.Heading(1, "Floor plans"));
            Contents(html, titles, [.. plans.Select(p => p.Name), .. otherPlans.Select(o => o.Plan)]);
        }

        var writer = new PagePlan(html, single ? 1 : 2, !single);
        int number = 0;
        foreach (var plan in plans)
        {
            Plan(() => writer.Write(plan, others.FirstOrDefault(o => o.Plan == plan.Name)?.Files ?? []));
        }

        foreach (var other in otherPlans)
        {
            Plan(() => writer.Write(other));
        }

        return html.Append("<p>").Append(PageText.Text(CheckText.Caution)).Append("</p>\n</main>\n</body>\n</html>\n").ToString();

        void Plan(Action write)
        {
            html.Append(CultureInfo.InvariantCulture, $"<div class=\"plan\" id=\"plan-{++number}\">\n");
            write();
            html.Append("</div>\n");
        }
    }

    /// <summary>Whether a page was written by an earlier run.</summary>
    public static bool IsOurs(string page) => page.Split('\n', LinesToMarker).Contains(Marker);

    private static void Head(StringBuilder html, string title) => html
        .Append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n<meta name=\"viewport\" ")
        .Append("content=\"width=device-width, initial-scale=1\"/>\n").Append(Marker).Append("\n<title>").Append(PageText.Text(title))
        .Append(": drawings</title>\n<style>\n").Append(PageStyle.Sheet).Append("</style>\n</head>\n<body>\n<main>\n");

    private static void Contents(StringBuilder html, IReadOnlyList<string> titles, IReadOnlyList<string> names)
    {
        html.Append("<nav aria-label=\"Plans on this page\">\n<ul>\n");
        foreach (var (i, (title, name)) in titles.Zip(names).Index())
        {
            string words = PageText.Text($"{title} ({name})");
            html.Append(CultureInfo.InvariantCulture, $"<li><a href=\"#plan-{i + 1}\">{words}</a></li>\n");
        }

        html.Append("</ul>\n</nav>\n");
    }
}
