using System.CommandLine;
using Floorplan.Cli.Hosting;
using Floorplan.Cli.Input;
using Floorplan.Cli.Output;

namespace Floorplan.Cli.Commands;

/// <summary>Draws plans as sheets, with their findings marked.</summary>
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
        var command = new Command("draw", "Check a plan and draw its sheets as SVG files.") { files, output, sheets };
        command.SetAction(parsed => Run(host, parsed.GetValue(files)!, parsed.GetValue(output)!, parsed.GetValue(sheets) ?? []));
        return command;
    }

    private static int Run(Host host, IReadOnlyList<string> files, string folder, int[] sheets)
    {
        List<Checked> all = [.. files.Select(f => Checked.Read(f, host))];
        if (SameNameTwice(all) is { } twice)
        {
            Page.OfError(host).Line(new Piece("floorplan: ", Tone.Error), $"two of the files are named {twice}, so their sheets would have the same names; draw them into folders of their own");
            return ExitCode.CouldNotRun;
        }

        if (File.Exists(host.Full(folder)))
        {
            Page.OfError(host).Line(new Piece("floorplan: ", Tone.Error), $"{folder}: this is a file; --out names a folder");
            return ExitCode.CouldNotRun;
        }

        int exit = all.Max(c => Draw(host, c, folder, sheets));
        if (all.Any(c => c.Examination?.Plan is not null))
        {
            Page.OfOutput(host).Line(new Piece(CheckText.Caution, Tone.Quiet));
        }

        return exit;
    }

    private static int Draw(Host host, Checked input, string folder, int[] sheets)
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
        return Write(host, input, folder, sheets);
    }

    // Without the option the list is empty: all sheets.
    private static int Write(Host host, Checked input, string folder, int[] sheets)
    {
        int exit = input.ExitCode;
        foreach (var (name, svg) in SheetFiles.Draw(input.Examination!, sheets.Length > 0 ? sheets : null))
        {
            string file = Path.Combine(folder, $"{input.Input.BaseName}-{name}.svg");
            if (WholeFile.Replace(host.Full(file), svg) is { } problem)
            {
                Page.OfError(host).Line(new Piece("floorplan: ", Tone.Error), $"{file}: {problem}");
                exit = ExitCode.CouldNotRun;
            }
            else
            {
                Page.OfOutput(host).Line("  wrote ", new Piece(file, Tone.Strong));
            }
        }

        return exit;
    }

    private static string? SameNameTwice(IEnumerable<Checked> all)
        => all.GroupBy(c => c.Input.BaseName, StringComparer.OrdinalIgnoreCase).FirstOrDefault(g => g.Count() > 1)?.Key;
}
