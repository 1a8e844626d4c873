using Floorplan.Cli.Hosting;
using Floorplan.Cli.Input;
using Floorplan.Cli.Output.Drawings.Pages;
using Floorplan.Cli.Output.Printing;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Sheets.Keeping;
using Floorplan.Language.Diagnostics;
using Floorplan.Print.Fonts;

namespace Floorplan.Cli.Output.Drawings;

/// <summary>Makes the files of drawings and writes them into one folder, each whole or not at all, and says which.</summary>
/// <param name="numbers">Which sheets; null for all. Schedules and the index page come only with all of them.</param>
/// <param name="since">The revision that changes are clouded against; null for none.</param>
internal sealed class DrawingWriter(
    Host host, OutputFolder folder, DrawFormat[] formats, int dpi, IReadOnlyCollection<int>? numbers, Checked? since = null)
{
    private readonly List<DrawnPlan> _drawn = [];

    /// <summary>The paper of a small printer that the set is cut for as well; null for none.</summary>
    public PaperSize? Print { get; init; }

    /// <summary>Makes every file of a plan before the first is written. Returns the exit code.</summary>
    /// <param name="kept">The sheets as they were drawn before; null lays every sheet out.</param>
    public int Write(Checked input, KeptSheets? kept = null)
    {
        var plan = new DrawnPlan(input, formats, dpi, numbers, since, kept) { Print = Print };
        if (plan.TooFine() is { } problem)
        {
            return Refusal.Tell(host, problem);
        }

        var files = LongWork.Make(host, "drawing", [.. plan.Makers()], plan.AtOnce);
        var (mayWrite, exit) = folder.Begin(plan, files);
        if (!mayWrite)
        {
            return exit;
        }

        exit = files.Select(folder.Put).Append(TellNotDrawn(plan)).Append(exit).Max();
        if (plan.Has(DrawFormat.Pdf) || plan.Has(DrawFormat.Png))
        {
            WarnOfMissing(plan);
        }

        _drawn.Add(plan);
        return exit;
    }

    public int WriteIndex() => numbers is null && _drawn.Count > 0
        ? folder.PutIndex(IndexPage.Write(_drawn, OtherDrawings.Of(folder, _drawn)))
        : ExitCode.Fine;

    private int TellNotDrawn(DrawnPlan plan)
    {
        var error = Page.OfError(host);
        foreach (string sentence in plan.NotCut)
        {
            Refusal.Tell(host, sentence);
        }

        foreach (var sheet in plan.NotDrawn)
        {
            error.Line($"{DiagnosticText.Place(sheet.Span)}: ", new Piece("error: ", Tone.Error), sheet.Message);
            error.Line(new Piece("  mend: ", Tone.Good), sheet.WayOut);
        }

        return plan.NotDrawn.Count > 0 ? ExitCode.Errors : ExitCode.Fine;
    }

    private void WarnOfMissing(DrawnPlan plan)
    {
        var missing = MissingCharacters.Of(plan.Sheets);
        if (missing.Count > 0)
        {
            Page.OfOutput(host)
                .Line($"  pdf and png show {MissingCharacters.Mark} for characters that their typeface lacks: "
                    + $"{string.Join(' ', missing.Take(20))}{(missing.Count > 20 ? " …" : "")}");
        }
    }
}
