using System.Globalization;
using System.Text;
using Floorplan.Checks.Findings;
using Floorplan.Cli.Output.Reports;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Svg;

namespace Floorplan.Cli.Output.Drawings;

/// <summary>
/// The page <c>index.html</c> beside the files of a drawing: every sheet, every finding, every schedule. Plain HTML, well formed,
/// without script; what comes from a plan is cleaned and escaped, and links are relative, so that the folder can be handed on.
/// </summary>
internal static class IndexPage
{
    public const string Name = "index.html";

    /// <summary>A line that tells it from a page of somebody else.</summary>
    private const string Marker = "<meta name=\"generator\" content=\"floorplan draw\"/>";

    private const int LinesToMarker = 8;

    /// <summary>Names are long only when somebody means harm.</summary>
    private const int Longest = 600;

    /// <param name="others">What else the folder holds, drawn by earlier runs.</param>
    public static string Write(IReadOnlyList<DrawnPlan> plans, IReadOnlyList<OtherDrawings> others)
    {
        OtherDrawings[] otherPlans = [.. others.Where(o => plans.All(p => p.Name != o.Plan))];
        bool single = plans.Count + otherPlans.Length == 1;
        string title = single ? Text(plans[0].Examination.Plan!.Head.Title) : "Floor plans";
        var html = new StringBuilder();
        html.Append(
            "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n<meta name=\"viewport\" "
                + "content=\"width=device-width, initial-scale=1\"/>\n")
            .Append(Marker).Append('\n')
            .Append("<title>").Append(title.Length > 0 ? title : "Floor plan").Append(": drawings</title>\n<style>\n").Append(Style)
                .Append("</style>\n</head>\n<body>\n<main>\n");
        if (!single)
        {
            html.Append("<h1>Floor plans</h1>\n");
        }

        foreach (var plan in plans)
        {
            Plan(html, plan, single ? 1 : 2, others.FirstOrDefault(o => o.Plan == plan.Name)?.Files ?? []);
        }

        foreach (var other in otherPlans)
        {
            Other(html, other);
        }

        return html.Append("<p>").Append(Text(CheckText.Caution)).Append("</p>\n</main>\n</body>\n</html>\n").ToString();
    }

    /// <summary>Whether a page was written by an earlier run.</summary>
    public static bool IsOurs(string page) => page.Split('\n', LinesToMarker).Contains(Marker);

    private static string Style => """
        body { font-family: Inter, 'Helvetica Neue', Helvetica, Arial, sans-serif; line-height: 1.45; margin: 1.5rem; }
        body { color: #1a1a1a; background: #ffffff; }
        main { max-width: 75rem; margin: 0 auto; overflow-wrap: anywhere; }
        a { color: #00507d; }
        table { border-collapse: collapse; width: 100%; }
        th, td { border: 1px solid #767676; padding: .3rem .5rem; text-align: left; vertical-align: top; }
        th:nth-child(-n+2), td:nth-child(-n+2) { white-space: nowrap; overflow-wrap: normal; }
        th:nth-child(-n+2), td:nth-child(-n+2) { overflow-wrap: normal; white-space: nowrap; }
        figure { margin: 0 0 1.5rem; }
        img { width: 100%; height: auto; border: 1px solid #767676; }

        """;

    private static void Plan(StringBuilder html, DrawnPlan plan, int level, IReadOnlyList<string> more)
    {
        var examination = plan.Examination;
        string name = Text(examination.Plan!.Head.Title);
        Heading(html, level, name.Length > 0 ? name : Text(plan.Name));
        html.Append("<p>").Append(Text(Path.GetFileName(plan.Input.Input.Name))).Append(": ").Append(Text(Counts.Of(examination).Text()))
            .Append(".</p>\n");
        Files(html, plan, level + 1, more);
        Findings(html, examination.Findings, level + 1);
        Heading(html, level + 1, "Sheets");
        foreach (var sheet in plan.Sheets)
        {
            Sheet(html, plan, sheet, level + 2);
        }
    }

    /// <summary>A plan that an earlier run drew: its pictures and other files, which hold its findings.</summary>
    private static void Other(StringBuilder html, OtherDrawings other)
    {
        string name = Text(other.Title);
        Heading(html, 2, name.Length > 0 ? name : Text(other.Plan));
        html.Append("<p>").Append(Text(other.Plan)).Append(": drawn by an earlier run; what was found then is on its sheet 9.</p>\n<ul>\n");
        foreach (string file in other.Files)
        {
            html.Append("<li>").Append(Link(file, file)).Append("</li>\n");
        }

        html.Append("</ul>\n");
        foreach (string file in other.Files.Where(f => f.EndsWith(".svg", StringComparison.Ordinal)))
        {
            html.Append("<figure>\n<img src=\"").Append(Uri.EscapeDataString(file)).Append("\" alt=\"").Append(Text(file))
                .Append("\"/>\n<figcaption>").Append(Link(file, file)).Append("</figcaption>\n</figure>\n");
        }
    }

    private static void Files(StringBuilder html, DrawnPlan plan, int level, IReadOnlyList<string> more)
    {
        Heading(html, level, "Files");
        html.Append("<ul>\n");
        if (plan.Has(DrawFormat.Pdf))
        {
            html.Append("<li>").Append(Link(plan.FileOf(plan.Sheets[0], DrawFormat.Pdf), "All sheets for printing, PDF")).Append("</li>\n");
        }

        foreach (var (file, _) in plan.CutOuts)
        {
            html.Append("<li>").Append(Link(file, "Holes for a cutting table, DXF")).Append(' ').Append(Text(file)).Append("</li>\n");
        }

        foreach (var schedule in plan.Schedules)
        {
            html.Append("<li>").Append(Link(plan.FileOf(schedule), $"{schedule.Title}, {schedule.Rows.Count} rows, CSV")).Append("</li>\n");
        }

        foreach (string file in more)
        {
            html.Append("<li>").Append(Link(file, file)).Append(", drawn from the same text by an earlier run</li>\n");
        }

        html.Append("</ul>\n");
    }

    private static void Findings(StringBuilder html, IReadOnlyList<Finding> findings, int level)
    {
        Heading(html, level, "Findings");
        if (findings.Count == 0)
        {
            html.Append("<p>Nothing was found.</p>\n");
            return;
        }

        html.Append(
            "<table>\n<thead><tr><th scope=\"col\">No</th><th scope=\"col\">Severity</th><th scope=\"col\">Finding</th><th "
                + "scope=\"col\">Limit and source</th><th scope=\"col\">What would mend it</th></tr></thead>\n<tbody>\n");
        foreach (var (index, finding) in findings.Index())
        {
            string mend = finding.AcceptedBy is { } accepted ? "accepted: " + accepted.Reason : finding.Mend;
            html.Append(
                CultureInfo.InvariantCulture,
                $"<tr><td>{index + 1}</td><td>{Text(finding.SeverityWord)}</td><td>{Text(finding.Message)} (line "
                    + $"{finding.Span.Position.Line}, rule "
                    + $"{Text(finding.Rule)})</td><td>{Text(finding.Limit)}</td><td>{Text(mend)}</td></tr>\n");
        }

        html.Append("</tbody>\n</table>\n");
    }

    private static void Sheet(StringBuilder html, DrawnPlan plan, SheetScene sheet, int level)
    {
        Heading(html, level, $"{sheet.Name[..sheet.Name.IndexOf('-', StringComparison.Ordinal)]} {Text(sheet.Title)}");
        string[] links =
            [.. new[] { DrawFormat.Svg, DrawFormat.Png, DrawFormat.Dxf }.Where(plan.Has)
                .Select(f => Link(plan.FileOf(sheet, f), f.ToString().ToUpperInvariant()))];
        var shown = plan.Has(DrawFormat.Svg) ? DrawFormat.Svg : DrawFormat.Png;
        html.Append("<figure>\n");
        if (plan.Has(shown))
        {
            html.Append("<img src=\"").Append(Uri.EscapeDataString(plan.FileOf(sheet, shown))).Append("\" alt=\"")
                .Append(Text($"{sheet.Title}. {sheet.Description}")).Append("\"/>\n");
        }

        html.Append("<figcaption>").Append(Text(sheet.Description)).Append(links.Length > 0 ? " " : "").AppendJoin(", ", links)
            .Append("</figcaption>\n</figure>\n");
    }

    private static void Heading(StringBuilder html, int level, string escaped)
        => html.Append(CultureInfo.InvariantCulture, $"<h{level}>{escaped}</h{level}>\n");

    private static string Link(string file, string text) => $"<a href=\"{Uri.EscapeDataString(file)}\">{Text(text)}</a>";

    private static string Text(string text) => XmlText.Escape(Drawing.Lettering.SafeText.Clean(text, Longest));
}
