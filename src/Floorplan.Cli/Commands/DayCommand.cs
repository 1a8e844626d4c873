using System.CommandLine;
using Floorplan.Cli.Commands.Options;
using Floorplan.Cli.Hosting;
using Floorplan.Cli.Input;
using Floorplan.Cli.Output.Days;
using Floorplan.Cli.Output.Json;
using Floorplan.Cli.Output.Printing;
using Floorplan.Cli.Output.Reports;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Sheets.TheDay;
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
        var (options, pictures) = DayPictureOptions.Build();
        var command =
            new Command("day", "Run the day: does the line keep up, what holds it up, what would one change gain.") { file, output, vary };
        foreach (var option in options)
        {
            command.Add(option);
        }

        command.SetAction(parsed => Run(
            host, parsed.GetValue(file)!, parsed.GetValue(output)!, parsed.GetValue(vary) ?? [], pictures(parsed)));
        return command;
    }

    private static int Run(Host host, string name, string output, string[] vary, DayPictureOptions pictures)
    {
        if (pictures.Problem() is { } wrong)
        {
            return Refusal.Tell(host, wrong);
        }

        var input = Checked.Read(name, host);
        if (input.Examination is not { Plan: { } plan, Facts: { } facts })
        {
            UnreadText.Write(host, input, "no day is run");
            return input.ExitCode;
        }

        var day = facts.Day;
        if (pictures.IsAsked && day.Planned.Line is null)
        {
            DayText.Write(Page.OfError(host), plan, day, DayGains.Of(day));
            return ExitCode.CouldNotRun;
        }

        var writer = new DayPictures(host, input, facts);
        if (vary.Length > 0)
        {
            return pictures.Animate is null
                ? Vary(host, plan, day, output, vary, pictures.Chart is { } chart ? scene => writer.WriteScene(chart, scene) : null)
                : Refusal.Tell(host, "--vary makes many runs and --animate shows one: say one of both");
        }

        if (pictures.IsAsked)
        {
            return writer.Write(pictures);
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

    /// <param name="chart">Writes the chart, instead of the table; null where none is asked for.</param>
    private static int Vary(Host host, Plan plan, PlannedDay day, string output, string[] vary, Func<SheetScene, int>? chart)
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

        if (chart is not null && GridPicture.Problem(figures) is { } tooMuch)
        {
            return Refusal.Tell(host, tooMuch);
        }

        var runs = LongWork.Make(host, "Running days", DayGrid.Of(day, figures), Environment.ProcessorCount);
        if (chart is not null)
        {
            return chart(GridPicture.Draw(plan, day, figures, runs));
        }

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
