using System.Globalization;
using Floorplan.Checks.Mending;
using Floorplan.Cli.Input;
using Floorplan.Cli.Output.Printing;

namespace Floorplan.Cli.Output.Reports;

/// <summary>The changes of the text that mend findings, for people: after all findings, since looking for them takes longest.</summary>
internal static class MendsText
{
    /// <param name="named">Whether the file is named, because there are several.</param>
    public static void Write(Page page, Checked input, bool named)
    {
        if (input.Examination?.Proposals is not { } proposals)
        {
            return;
        }

        (int Number, Proposal Proposal)[] found =
            [.. proposals.Findings.Index().Where(f => f.Item.Proposal is not null).Select(f => (f.Index + 1, f.Item.Proposal!))];
        string of = named ? $" in {input.Input.Name}" : "";
        if (found.Length > 0)
        {
            page.Gap();
            page.Line(new Piece($"Small changes{of}, each checked with the whole plan:", Tone.Good));
        }

        foreach (var (number, proposal) in found)
        {
            string where = proposal.Before.Length == 0 ? "add" : FormattableString.Invariant($"write line {proposal.Line} as");
            page.Line(new Piece(FormattableString.Invariant($"  mends {number}: "), Tone.Good), $"{where}: {proposal.After.Trim()}");
        }

        if (NotAll(proposals, of) is { } sentence)
        {
            page.Line(new Piece(sentence, Tone.Quiet));
        }
    }

    /// <summary>That more changes could be tried; null when all were.</summary>
    /// <param name="of">Names the file, as <c> in NAME</c>, or is empty.</param>
    public static string? NotAll(Proposals proposals, string of) => proposals.IsAll
        ? null
        : $"Looked at {proposals.Tried.ToString("N0", CultureInfo.InvariantCulture).Replace(',', ' ')} small changes{of}; "
            + "more are not tried. check --mend tries more.";
}
