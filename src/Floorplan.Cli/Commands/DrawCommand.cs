using System.CommandLine;
using Floorplan.Cli.Commands.Options;
using Floorplan.Cli.Hosting;
using Floorplan.Cli.Input;
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
        var print = PrintPaper.Build();
        var since =
            new Option<string?>("--since")
            {
                Description = "Another revision of the plan: what differs is clouded on the plans and listed.",
                HelpName = "OLD"
            };
        var follow = new Option<bool>("--follow")
        {
            Description = "Draw again each time a file is saved, and write the files that changed; Ctrl+C ends it.",
        };
        var command =
            new Command("draw", "Check a plan and draw its sheets, with schedules and an index page.") {
                files, output, sheets, formats, dpi, print, since, follow };
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

            var round =
                new DrawRound(
                    host, names, parsed.GetValue(output)!, parsed.GetValue(formats)!, parsed.GetValue(dpi), numbers.Length > 0
                        ? numbers
                        : null, old)
                {
                    Print = parsed.GetValue(print),
                };
            return parsed.GetValue(follow) ? Following.Run(host, round, names) : round.Draw();
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

        UnreadText.Write(host, old, "nothing is compared");
        return null;
    }
}
