using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Cli.Input;
using Floorplan.Cli.Output.Printing;
using Floorplan.Model;

namespace Floorplan.Cli.Output.Reports;

/// <summary>What <c>check</c> prints for people.</summary>
internal static class CheckText
{
    public const string Caution =
        "Checked against the figures named here; local codes, the authority having jurisdiction and licensed practice prevail.";

    public static void Write(Page page, Checked input)
    {
        if (input.Examination is not { } examination)
        {
            return;
        }

        foreach (var diagnostic in examination.Diagnostics)
        {
            MistakeText.Write(page, diagnostic);
        }

        for (int i = 0; i < examination.Findings.Count; i++)
        {
            FindingText.Write(page, examination.Findings[i], i + 1);
        }

        WriteSummary(page, input.Input.Name, examination);
        if (examination.Plan is { } plan)
        {
            page.Prose(NotJudged.Of(plan, examination.Findings).Text);
            if (NotJudged.NotChosen(plan.Head) is { } open)
            {
                page.Prose(open);
            }
        }
    }

    /// <summary>One line: the counts, and what it was checked against or why it was not.</summary>
    public static void WriteSummary(Page page, string name, Examination examination)
    {
        var counts = Counts.Of(examination);
        page.Line($"{name}: ", new Piece(counts.Text(), counts.Tone()), "; ", Against(examination));
    }

    /// <summary>Ends the report: the total of several files, and the caution.</summary>
    public static void WriteTotal(Page page, IReadOnlyList<Checked> all)
    {
        Examination[] read = [.. all.Select(c => c.Examination).OfType<Examination>()];
        if (all.Count > 1)
        {
            var total = read.Select(Counts.Of).Aggregate(FindingCounts.None, (a, b) => a + b);
            page.Line($"{all.Count} files: ", new Piece(total.Text(), total.Tone()), read.Length < all.Count
                ? $"; {all.Count - read.Length} not read"
                : "");
        }

        if (read.Any(e => e.Diagnostics.Count + e.Findings.Count > 0))
        {
            page.Line(new Piece("floorplan explain NAME says more about what stands in [ ].", Tone.Quiet));
        }

        if (read.Any(e => e.Plan is not null))
        {
            page.Line(new Piece(Caution, Tone.Quiet));
        }
    }

    private static string Against(Examination examination) => examination.Plan is { } plan
        ? $"{RuleCatalogue.All.Count} rules checked, {CodeText(plan.Head.Code)}"
        : "the text must be mended before the layout can be checked";

    private static string CodeText(CodeChoice code) => code switch
    {
        CodeChoice.Us => "code us",
        CodeChoice.Eu => "code eu",
        _ => "no code chosen",
    };
}
