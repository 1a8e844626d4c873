using System.Globalization;
using System.Text;
using Floorplan.Checks.Findings;

namespace Floorplan.Cli.Output.Drawings.Pages;

/// <summary>
/// Findings in the order and with the numbers of the sheets. A list and no table, so that it also reads well on a telephone.
/// </summary>
internal static class FindingList
{
    public static void Write(StringBuilder html, IReadOnlyList<Finding> findings)
    {
        if (findings.Count == 0)
        {
            html.Append("<p>Nothing was found.</p>\n");
            return;
        }

        html.Append("<ol>\n");
        foreach (var finding in findings)
        {
            string mend = finding.AcceptedBy is { } accepted ? "Reason: " + accepted.Reason : "What would mend it: " + finding.Mend;
            html.Append(CultureInfo.InvariantCulture, $"<li><p><strong>{PageText.Text(PageText.Capital(finding.SeverityWord))}</strong>: ")
                .Append(CultureInfo.InvariantCulture, $"{PageText.Text(finding.Message)} (line {finding.Span.Position.Line}, rule ")
                .Append(PageText.Text(finding.Rule)).Append(").</p>\n<p>").Append(PageText.Text(mend)).Append("</p>\n");
            if (finding.Limit is { Length: > 0 } limit)
            {
                html.Append("<p>").Append(PageText.Text(PageText.Capital(limit))).Append("</p>\n");
            }

            html.Append("</li>\n");
        }

        html.Append("</ol>\n");
    }
}
