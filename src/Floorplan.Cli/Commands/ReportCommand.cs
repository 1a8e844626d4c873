using System.CommandLine;
using Floorplan.Cli.Hosting;
using Floorplan.Cli.Input;
using Floorplan.Cli.Output.Files;
using Floorplan.Cli.Output.Printing;
using Floorplan.Cli.Output.Reports;
using Floorplan.Drawing.Reports;
using Floorplan.Print.Pdf;

namespace Floorplan.Cli.Commands;

/// <summary>Writes one document of all that is worked out: for the owner first, then every calculation with its working.</summary>
internal static class ReportCommand
{
    public static Command Build(Host host)
    {
        var file = new Argument<string>("FILE") { HelpName = "FILE", Description = "A .unit file; - reads standard input." };
        var output = new Option<string>("--out")
        {
            Description = "The folder to write to; it is made when it is not there.",
            HelpName = "DIR",
            DefaultValueFactory = _ => "out",
        };
        var command = new Command("report", "Write a report, HTML and PDF: does it keep up, what does it need, with every working.")
        {
            file, output,
        };
        command.SetAction(parsed => Run(host, parsed.GetValue(file)!, parsed.GetValue(output)!));
        return command;
    }

    private static int Run(Host host, string name, string folder)
    {
        var input = Checked.Read(name, host);
        if (input.Examination is not { Plan: { } plan, Facts: { } facts } examination)
        {
            UnreadText.Write(host, input, "no report is written");
            return input.ExitCode;
        }

        var report = PlanReport.Of(facts, examination.Findings);
        string stem = Path.Combine(host.Full(folder), input.Input.BaseName + "-report");
        var info = new PdfInfo(report.Title + ": report", plan.Head.DrawnBy.Length > 0 ? plan.Head.DrawnBy : plan.Head.Owner, "", null);
        foreach (var (path, write) in new (string, Func<string, string?>)[]
        {
            (stem + ".html", p => WholeFile.Replace(p, ReportHtml.Write(report))),
            (stem + ".pdf", p => WholeFile.Replace(p, PdfWriter.Write(ReportPages.Of(report, plan.Units), info))),
        })
        {
            if (write(path) is { } problem)
            {
                return Refusal.Tell(host, $"{path}: {problem}");
            }

            Page.OfOutput(host).Line($"wrote {path}");
        }

        return ExitCode.Fine;
    }
}
