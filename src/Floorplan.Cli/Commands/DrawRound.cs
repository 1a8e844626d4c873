using Floorplan.Cli.Hosting;
using Floorplan.Cli.Input;
using Floorplan.Cli.Output.Drawings;
using Floorplan.Cli.Output.Printing;
using Floorplan.Cli.Output.Reports;
using Floorplan.Drawing.Frames;

namespace Floorplan.Cli.Commands;

/// <summary>
/// Reads plans and draws them, as often as it is asked to; what a saved file does not change is taken over from the last time.
/// </summary>
/// <param name="names">Of the files, as on the command line.</param>
/// <param name="output">The folder, as on the command line.</param>
/// <param name="numbers">Which sheets; null for all.</param>
/// <param name="since">The revision that changes are clouded against; null for none.</param>
internal sealed class DrawRound(
    Host host, IReadOnlyList<string> names, string output, DrawFormat[] formats, int dpi, IReadOnlyCollection<int>? numbers,
    Checked? since)
{
    private readonly Dictionary<string, KeptPlan> kept = [];
    private readonly WrittenFiles written = new();

    /// <summary>The paper of a small printer that the set is cut for as well; null for none.</summary>
    public PaperSize? Print { get; init; }

    /// <summary>Full paths of all that was read the last time.</summary>
    public IReadOnlyList<string> FilesRead { get; private set; } = [];

    /// <summary>Keeps what it works out for the next time. Returns the exit code.</summary>
    public int DrawAndKeep() => Draw(name => kept.TryGetValue(name, out var known) ? known : kept[name] = new KeptPlan());

    /// <summary>Once. Returns the exit code.</summary>
    public int Draw() => Draw(_ => null);

    private int Draw(Func<string, KeptPlan?> keptOf)
    {
        List<(Checked Plan, KeptPlan? Kept)> all = [.. names.Select(f => (Checked.Read(f, host, keptOf(f)), keptOf(f)))];
        string[] inputs = [.. all.Select(p => p.Plan).Append(since).Select(c => c?.Input.Path).OfType<string>()];
        FilesRead = [.. inputs, .. all.SelectMany(p => p.Plan.UsedPaths)];
        var folder = new OutputFolder(host, output, inputs, written);
        if (SameNameTwice(all.Select(p => p.Plan)) is { } twice)
        {
            return Refusal.Tell(
                host,
                $"two of the files are named {twice}, so their sheets would have the same names; draw them into folders of their own");
        }

        if (folder.Open() == ExitCode.CouldNotRun)
        {
            return ExitCode.CouldNotRun;
        }

        var writer = new DrawingWriter(host, folder, formats, dpi, numbers, since) { Print = Print };
        int exit = all.Max(p => Draw(p.Plan, p.Kept, writer));
        exit = Math.Max(exit, writer.WriteIndex());
        if (all.Exists(p => p.Plan.Examination?.Plan is not null))
        {
            Page.OfOutput(host).Line(new Piece(CheckText.Caution, Tone.Quiet));
        }

        return exit;
    }

    private int Draw(Checked input, KeptPlan? keptPlan, DrawingWriter writer)
    {
        var error = Page.OfError(host);
        if (input.Examination is not { } examination)
        {
            error.Line(new Piece("floorplan: ", Tone.Error), $"{input.Input.Name}: {input.Input.Problem}");
            return input.ExitCode;
        }

        if (examination.Plan is null)
        {
            CheckText.Write(error, input);
            error.Line(new Piece("floorplan: ", Tone.Error), $"{input.Input.Name}: nothing is drawn until the text is mended");
            return input.ExitCode;
        }

        var page = Page.OfOutput(host);
        foreach (var diagnostic in examination.Diagnostics)
        {
            MistakeText.Write(page, diagnostic);
        }

        foreach (var (index, finding) in examination.Findings.Index())
        {
            FindingText.Line(page, finding, index + 1);
        }

        CheckText.WriteSummary(page, input.Input.Name, examination);
        return Math.Max(input.ExitCode, writer.Write(input, keptPlan?.Sheets));
    }

    private static string? SameNameTwice(IEnumerable<Checked> all)
        => all.GroupBy(c => c.Input.BaseName, StringComparer.OrdinalIgnoreCase).FirstOrDefault(g => g.Count() > 1)?.Key;
}
