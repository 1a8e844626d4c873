using System.CommandLine;
using Floorplan.Cli.Commands.Options;
using Floorplan.Cli.Hosting;
using Floorplan.Cli.Input;
using Floorplan.Cli.Output.Json;
using Floorplan.Cli.Output.Printing;
using Floorplan.Cli.Output.Reports;

namespace Floorplan.Cli.Commands;

/// <summary>Says what is wrong with plans, and draws nothing.</summary>
internal static class CheckCommand
{
    public static Command Build(Host host)
    {
        var files = FileArguments.Build();
        var output = new Option<string>("--output")
        {
            Description = "How to print: text for people, markdown for a report, json or sarif for programs.",
            DefaultValueFactory = _ => "text"
        };
        output.AcceptOnlyFromAmong("text", "markdown", "json", "sarif");
        var mend = new Option<bool>("--mend")
        {
            Description = "First write small changes into the file that mend findings and make none worse; say each."
        };
        var dry = new Option<bool>("--dry-run")
        {
            Description = "With --mend: print the change as a patch, and write nothing."
        };
        var command = new Command("check", "Say what is wrong with a plan and what would mend it.") { files, output, mend, dry };
        command.Validators.Add(r =>
        {
            if (r.GetValue(dry) && !r.GetValue(mend))
            {
                r.AddError("--dry-run goes with --mend");
            }
            else if (r.GetValue(dry) && r.GetResult(output) is { Implicit: false })
            {
                r.AddError("--dry-run prints a patch, so it does not go with --output");
            }
        });
        command.SetAction(parsed =>
        {
            string[] names = parsed.GetValue(files)!;
            if (parsed.GetValue(dry))
            {
                return names.Max(f => PlanMending.Show(host, f));
            }

            int mended = parsed.GetValue(mend) ? names.Max(f => PlanMending.Run(host, f)) : ExitCode.Fine;
            return mended == ExitCode.CouldNotRun ? mended : Run(host, names, parsed.GetValue(output)!);
        });
        return command;
    }

    private static int Run(Host host, IReadOnlyList<string> files, string output)
    {
        List<Checked> all = [.. files.Select(f => Checked.Read(f, host))];
        if (output != "text")
        {
            all = all.ConvertAll(c => c.WithProposals());
        }

        int exit = all.Max(c => c.ExitCode);
        switch (output)
        {
            case "json":
                CheckJson.Write(host.Out, all, exit);
                break;
            case "sarif":
                CheckSarif.Write(host.Out, all);
                break;
            case "markdown":
                CheckMarkdown.Write(host.Out, all);
                break;
            default:
                var page = Page.OfOutput(host);
                all.ForEach(c => CheckText.Write(page, c));
                CheckText.WriteTotal(page, all);

                // Looking for changes takes longest: a person reads the findings meanwhile.
                host.Out.Flush();
                all.ForEach(c => MendsText.Write(page, c.WithProposals(), all.Count > 1));
                break;
        }

        // In a document the problem is part of the document as well; a person who pipes it should still see why.
        foreach (var input in all.Where(c => c.Input.Problem is not null))
        {
            Page.OfError(host).Line(new Piece("floorplan: ", Tone.Error), $"{input.Input.Name}: {input.Input.Problem}");
        }

        return exit;
    }
}
