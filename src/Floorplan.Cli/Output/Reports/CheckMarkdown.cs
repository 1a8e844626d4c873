using System.Text;
using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Cli.Input;
using Floorplan.Cli.Output.Printing;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;

namespace Floorplan.Cli.Output.Reports;

/// <summary>What <c>check --output markdown</c> prints: a report for the file of an inspector. Names of a plan are escaped.</summary>
internal static class CheckMarkdown
{
    public static void Write(TextWriter output, IReadOnlyList<Checked> all)
    {
        var text = new StringBuilder();
        foreach (var input in all)
        {
            Write(text, input);
        }

        output.Write(text.ToString());
    }

    private static void Write(StringBuilder text, Checked input)
    {
        text.Append("# ").Append(Escape(input.Examination?.Plan?.Head.Title ?? input.Input.Name)).Append("\n\n");
        if (input.Examination is not { } examination)
        {
            text.Append("Could not be read: ").Append(Escape(input.Input.Problem ?? "")).Append("\n\n");
            return;
        }

        text.Append(Escape(input.Input.Name)).Append(": ").Append(Counts.Of(examination).Text());
        text.Append(examination.Plan is { } plan ? $"; code {plan.Head.Code.Word()}.\n\n" : "; the text must be mended first.\n\n");
        Diagnostics(text, examination);
        if (examination.Plan is null)
        {
            return;
        }

        Findings(text, examination.Findings);
        if (examination.Proposals is { } proposals && MendsText.NotAll(proposals, "") is { } sentence)
        {
            text.Append(sentence).Append("\n\n");
        }

        Rules(text, RuleResult.Of(examination.Plan, examination.Findings));
        text.Append(Escape(NotJudged.Of(examination.Plan, examination.Findings).Text)).Append(".\n\n");
        if (NotJudged.NotChosen(examination.Plan.Head) is { } open)
        {
            text.Append(Escape(open)).Append(".\n\n");
        }

        text.Append(
            "Checked against the figures named here; local codes, the authority having jurisdiction and licensed practice prevail.\n\n");
    }

    private static void Diagnostics(StringBuilder text, Examination examination)
    {
        foreach (var d in examination.Diagnostics)
        {
            text.Append("- **").Append(DiagnosticText.Word(d.Severity)).Append("** line ").Append(d.Span.Position.Line).Append(": ")
                .Append(Escape(d.Message));
            text.Append(d.Help is null ? "\n" : "; " + Escape(d.Help) + "\n");
        }

        text.Append(examination.Diagnostics.Count > 0 ? "\n" : "");
    }

    private static void Findings(StringBuilder text, IReadOnlyList<Finding> findings)
    {
        if (findings.Count == 0)
        {
            return;
        }

        text.Append("## Findings\n\n| No | severity | finding | limit and source | what would mend it |\n|---:|---|---|---|---|\n");
        foreach (var (index, f) in findings.Index())
        {
            string mend = f.AcceptedBy is { } accepted ? "accepted: " + accepted.Text
                : f.Proposal is { Before: "" } added ? $"{f.Mend}; add: {added.After.Trim()}"
                : f.Proposal is { } changed ? FormattableString.Invariant($"{f.Mend}; write line {changed.Line} as: {changed.After.Trim()}")
                : f.Mend;
            text.Append("| ").Append(index + 1).Append(" | ").Append(f.SeverityWord).Append(" | ").Append(Escape(f.Message))
                .Append(" (line ").Append(f.Span.Position.Line).Append(") | ")
                .Append(Escape(f.Limit)).Append(" | ").Append(Escape(mend)).Append(" |\n");
        }

        text.Append('\n');
    }

    private static void Rules(StringBuilder text, IReadOnlyList<RuleResult> results)
    {
        text.Append("## Rules that applied\n\n| rule | result | figure and source |\n|---|---|---|\n");
        foreach (var result in results)
        {
            text.Append("| `").Append(result.Rule.Name).Append("` | ").Append(result.Text).Append(" | ")
                .Append(Escape(result.FigureAndSource)).Append(" |\n");
        }

        text.Append('\n');
    }

    /// <summary>
    /// No text of a plan is markup here: each mark of punctuation that Markdown reads is escaped, and hidden characters are written
    /// out.
    /// </summary>
    private static string Escape(string text)
    {
        var safe = new StringBuilder(text.Length + 8);
        foreach (char c in VisibleText.Of(text).ReplaceLineEndings(" "))
        {
            safe.Append("\\`*_{}[]<>#|&~!".Contains(c, StringComparison.Ordinal) ? "\\" : "").Append(c);
        }

        return safe.ToString();
    }
}
