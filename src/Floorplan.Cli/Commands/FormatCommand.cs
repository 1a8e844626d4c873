using System.CommandLine;
using Floorplan.Cli.Commands.Options;
using Floorplan.Cli.Hosting;
using Floorplan.Cli.Input;
using Floorplan.Cli.Output.Files;
using Floorplan.Cli.Output.Printing;
using Floorplan.Cli.Output.Reports;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Formatting;
using Floorplan.Language.Syntax;

namespace Floorplan.Cli.Commands;

/// <summary>Lays the text of plans out evenly and keeps every word and comment.</summary>
internal static class FormatCommand
{
    private enum Mode
    {
        Rewrite,
        Check,
        Print,
    }

    public static Command Build(Host host)
    {
        var files = FileArguments.Build();
        var check = new Option<bool>("--check") { Description = "Change nothing; exit with 1 when a file is not in shape." };
        var print = new Option<bool>("--stdout") { Description = "Print the formatted text instead of changing the file." };
        var command = new Command("format", "Lay out the text of a plan evenly.") { files, check, print };
        command.Validators.Add(r =>
        {
            if (r.GetValue(check) && r.GetValue(print))
            {
                r.AddError("--check and --stdout exclude each other");
            }
        });
        command.SetAction(parsed =>
        {
            var mode = parsed.GetValue(check) ? Mode.Check : parsed.GetValue(print) ? Mode.Print : Mode.Rewrite;
            return parsed.GetValue(files)!.Max(f => Format(host, PlanFileReader.Read(f, host), mode));
        });
        return command;
    }

    private static int Format(Host host, PlanText input, Mode mode)
    {
        if (input.Source is null)
        {
            return Fail(host, input, input.Problem!, ExitCode.CouldNotRun);
        }

        var tree = SyntaxTree.Parse(input.Source);
        Diagnostic[] errors = [.. tree.Diagnostics.Where(d => d.Severity == Severity.Error)];
        if (errors.Length > 0)
        {
            var page = Page.OfError(host);
            Array.ForEach(errors, e => MistakeText.Write(page, e));
            return Fail(host, input, "left as it is: a text with mistakes is not laid out again", ExitCode.Errors);
        }

        string formatted = Formatter.Format(tree);
        bool inShape = formatted == input.Source.Content;
        switch (mode)
        {
            case Mode.Check:
                return inShape ? ExitCode.Fine : Fail(host, input, "not in shape; floorplan format mends it", ExitCode.Errors);
            case Mode.Rewrite when input.Path is not null:
                return inShape ? Say(host, $"{input.Name}: in shape already") : Rewrite(host, input, formatted);
            default:
                host.Out.Write(formatted);
                return ExitCode.Fine;
        }
    }

    private static int Rewrite(Host host, PlanText input, string formatted)
    {
        string? problem = PlanRewrite.Replace(input, formatted);
        return problem is null ? Say(host, $"{input.Name}: formatted") : Fail(host, input, problem, ExitCode.CouldNotRun);
    }

    private static int Say(Host host, string sentence)
    {
        Page.OfOutput(host).Line(sentence);
        return ExitCode.Fine;
    }

    private static int Fail(Host host, PlanText input, string sentence, int exit)
    {
        Page.OfError(host).Line(new Piece("floorplan: ", Tone.Error), $"{input.Name}: {sentence}");
        return exit;
    }
}
