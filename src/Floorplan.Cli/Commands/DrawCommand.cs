using System.CommandLine;
using Floorplan.Cli.Hosting;
using Floorplan.Cli.Input;
using Floorplan.Cli.Output.Drawings;
using Floorplan.Cli.Output.Printing;
using Floorplan.Cli.Output.Reports;

namespace Floorplan.Cli.Commands;

/// <summary>Draws plans as sheets, with their findings marked, and writes their schedules and a page that lists all.</summary>
internal static class DrawCommand
{
    public static Command Build(Host host)
    {
        var files = FileArguments.Build();
        var output = new Option<string>("--out")
        {
            Description = "The folder to write to; it is made when it is not there.",
            HelpName = "DIR",
            DefaultValueFactory = _ => "out",
        };
        var sheets = SheetNumbers.Build();
        var formats = DrawFormats.Build();
        var dpi = Dpi.Build();
        var since =
            new Option<string?>("--since")
            {
                Description = "Another revision of the plan: what differs is clouded on the plans and listed.",
                HelpName = "OLD"
            };
        var command =
            new Command("draw", "Check a plan and draw its sheets, with schedules and an index page.") {
                files, output, sheets, formats, dpi, since };
        command.Validators.Add(r => FileArguments.RefuseTwice(r, r.GetValue(since), r.GetValue(files)?.FirstOrDefault()));
        command.SetAction(parsed =>
        {
            int[] numbers = parsed.GetValue(sheets) ?? [];
            string[] names = parsed.GetValue(files)!;
            Checked? old = null;
            if (parsed.GetValue(since) is { } revision && (old = Revision(host, revision, names)) is null)
            {
                return ExitCode.CouldNotRun;
            }

            List<Checked> all = [.. names.Select(f => Checked.Read(f, host))];
            var folder =
                new OutputFolder(
                    host, parsed.GetValue(output)!, [.. all.Append(old).Select(c => c?.Input.Path).OfType<string>()]);
            var writer =
                new DrawingWriter(host, folder, parsed.GetValue(formats)!, parsed.GetValue(dpi), numbers.Length > 0
                    ? numbers
                    : null, old);
            return Run(host, all, folder, writer);
        });
        return command;
    }

    /// <summary>The revision to compare with; null when it cannot be, which is said.</summary>
    private static Checked? Revision(Host host, string name, IReadOnlyList<string> files)
    {
        var error = Page.OfError(host);
        if (files.Count > 1)
        {
            error.Line(
                new Piece("floorplan: ", Tone.Error), "--since compares one plan with another revision of it; draw one file at a time");
            return null;
        }

        var old = Checked.Read(name, host);
        if (old.Examination?.Plan is not null)
        {
            return old;
        }

        CheckText.Write(error, old);
        error.Line(new Piece("floorplan: ", Tone.Error), $"{name}: {old.Input.Problem ?? "nothing is compared until the text is mended"}");
        return null;
    }

    private static int Run(Host host, IReadOnlyList<Checked> all, OutputFolder folder, DrawingWriter writer)
    {
        if (SameNameTwice(all) is { } twice)
        {
            return Refusal.Tell(
                host,
                $"two of the files are named {twice}, so their sheets would have the same names; draw them into folders of their own");
        }

        if (folder.Open() == ExitCode.CouldNotRun)
        {
            return ExitCode.CouldNotRun;
        }

        int exit = all.Max(c => Draw(host, c, writer));
        exit = Math.Max(exit, writer.WriteIndex());
        if (all.Any(c => c.Examination?.Plan is not null))
        {
            Page.OfOutput(host).Line(new Piece(CheckText.Caution, Tone.Quiet));
        }

        return exit;
    }

    private static int Draw(Host host, Checked input, DrawingWriter writer)
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
        return Math.Max(input.ExitCode, writer.Write(input));
    }

    private static string? SameNameTwice(IEnumerable<Checked> all)
        => all.GroupBy(c => c.Input.BaseName, StringComparer.OrdinalIgnoreCase).FirstOrDefault(g => g.Count() > 1)?.Key;
}
