using System.CommandLine;
using Floorplan.Cli.Hosting;
using Floorplan.Cli.Input;
using Floorplan.Cli.Output.Days;
using Floorplan.Cli.Output.Json;
using Floorplan.Cli.Output.Printing;
using Floorplan.Cli.Output.Reports;
using Floorplan.Sizing.Simulation.Gains;

namespace Floorplan.Cli.Commands;

/// <summary>Runs the day of a plan: whether the line keeps up, what holds it up, and what one change would gain.</summary>
internal static class DayCommand
{
    public static Command Build(Host host)
    {
        var file = new Argument<string>("FILE") { HelpName = "FILE", Description = "A .unit file; - reads standard input." };
        var output = new Option<string>("--output")
        {
            Description = "How to print: text for people, json for programs.",
            DefaultValueFactory = _ => "text",
        };
        output.AcceptOnlyFromAmong("text", "json");
        var command =
            new Command("day", "Run the day: does the line keep up, what holds it up, what would one change gain.") { file, output };
        command.SetAction(parsed => Run(host, parsed.GetValue(file)!, parsed.GetValue(output) == "json"));
        return command;
    }

    private static int Run(Host host, string name, bool json)
    {
        var input = Checked.Read(name, host);
        if (input.Examination is not { Plan: { } plan, Facts: { } facts })
        {
            CheckText.Write(Page.OfError(host), input);
            Page.OfError(host).Line(
                new Piece("floorplan: ", Tone.Error),
                $"{input.Input.Name}: {input.Input.Problem ?? "no day is run until the text is mended"}");
            return input.ExitCode;
        }

        var day = facts.Day;
        var gains = DayGains.Of(day);
        if (json)
        {
            DayJson.Write(host.Out, name, plan, day, gains);
        }
        else
        {
            DayText.Write(Page.OfOutput(host), plan, day, gains);
        }

        return ExitCode.Fine;
    }
}
