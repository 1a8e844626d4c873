using System.CommandLine;
using Floorplan.Cli.Hosting;
using Floorplan.Cli.Input;
using Floorplan.Cli.Output.Json;
using Floorplan.Cli.Output.Printing;
using Floorplan.Cli.Output.Reports;
using Floorplan.Cli.Output.Sizes;

namespace Floorplan.Cli.Commands;

/// <summary>Works out what a unit needs: water, drains, power, cold, air, weight and money.</summary>
internal static class SizeCommand
{
    public static Command Build(Host host)
    {
        var file = new Argument<string>("FILE") { HelpName = "FILE", Description = "A .unit file; - reads standard input." };
        var working = new Option<bool>("--working") { Description = "Print how each figure is worked out, and where it comes from." };
        var output = new Option<string>("--output")
        {
            Description = "How to print: text for people, json for programs.",
            DefaultValueFactory = _ => "text",
        };
        output.AcceptOnlyFromAmong("text", "json");
        var command = new Command("size", "Work out what the unit needs, each figure with its working.") { file, working, output };
        command.SetAction(parsed => Run(host, parsed.GetValue(file)!, parsed.GetValue(working), parsed.GetValue(output)!));
        return command;
    }

    private static int Run(Host host, string name, bool working, string output)
    {
        var input = Checked.Read(name, host);
        if (input.Examination is not { Plan: { } plan, Facts: { } facts })
        {
            UnreadText.Write(host, input, "nothing is sized");
            return input.ExitCode;
        }

        if (output == "json")
        {
            SizeJson.Write(host.Out, name, plan, facts.Sizes);
        }
        else if (working)
        {
            WorkingPages.Write(Page.OfOutput(host), plan, facts.Sizes);
        }
        else
        {
            SizeText.Write(Page.OfOutput(host), plan, facts.Sizes);
        }

        return ExitCode.Fine;
    }
}
