using System.CommandLine;
using Floorplan.Cli.Hosting;
using Floorplan.Cli.Input;
using Floorplan.Cli.Output.Days;
using Floorplan.Cli.Output.Json;
using Floorplan.Cli.Output.Printing;
using Floorplan.Cli.Output.Reports;
using Floorplan.Model;
using Floorplan.Sizing.Simulation.Gains;
using Floorplan.Sizing.Simulation.Plans;

namespace Floorplan.Cli.Commands;

/// <summary>Runs the day of a plan: whether the line keeps up, what holds it up, and what one change would gain.</summary>
internal static class DayCommand
{
    public static Command Build(Host host)
    {
        var file = new Argument<string>("FILE") { HelpName = "FILE", Description = "A .unit file; - reads standard input." };
        var output = new Option<string>("--output")
        {
            Description = "How to print: text for people, json for programs, csv for a table of --vary.",
            DefaultValueFactory = _ => "text",
        };
        output.AcceptOnlyFromAmong("text", "json", "csv");
        var vary = new Option<string[]>("--vary")
        {
            HelpName = "NAME=FROM..TO",
            Description = "Try a figure from one value to another, such as crew.kill=2..8 or cones.holds=6..24; may be said several times.",
        };
        var command =
            new Command("day", "Run the day: does the line keep up, what holds it up, what would one change gain.") { file, output, vary };
        command.SetAction(parsed => Run(host, parsed.GetValue(file)!, parsed.GetValue(output)!, parsed.GetValue(vary) ?? []));
        return command;
    }

    private static int Run(Host host, string name, string output, string[] vary)
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
        if (vary.Length > 0)
        {
            return Vary(host, plan, day, output, vary);
        }

        if (output == "csv")
        {
            return Refusal.Tell(host, "csv is a table of runs: say what to vary, such as --vary crew.kill=2..8");
        }

        var gains = DayGains.Of(day);
        if (output == "json")
        {
            DayJson.Write(host.Out, name, plan, day, gains);
        }
        else
        {
            DayText.Write(Page.OfOutput(host), plan, day, gains);
        }

        return ExitCode.Fine;
    }

    private static int Vary(Host host, Plan plan, PlannedDay day, string output, string[] vary)
    {
        if (day.Planned.Line is not { } line)
        {
            DayText.Write(Page.OfError(host), plan, day, DayGains.Of(day));
            return ExitCode.CouldNotRun;
        }

        var asked = vary.Select(v => VariedFigure.Of(v, line)).ToList();
        if (asked.Find(a => a.Problem is not null).Problem is { } problem)
        {
            return Refusal.Tell(host, problem);
        }

        List<VariedFigure> figures = [.. asked.Select(a => a.Figure!)];
        if (DayGrid.IsTooLarge(day, figures))
        {
            return Refusal.Tell(
                host,
                FormattableString.Invariant($"more than {DayGrid.MostRuns} runs, or a minute of work: vary fewer figures or values"));
        }

        var runs = LongWork.Make(host, "Running days", DayGrid.Of(day, figures), Environment.ProcessorCount);
        switch (output)
        {
            case "json":
                GridText.Json(host.Out, day, figures, runs);
                break;
            case "csv":
                GridText.Csv(host.Out, day, figures, runs);
                break;
            default:
                GridText.Write(Page.OfOutput(host), day, figures, runs);
                break;
        }

        return ExitCode.Fine;
    }
}
