using System.CommandLine;
using Floorplan.Checks.Findings;
using Floorplan.Cli.Commands.Options;
using Floorplan.Cli.Hosting;
using Floorplan.Cli.Input;
using Floorplan.Cli.Output.Json;
using Floorplan.Cli.Output.Printing;
using Floorplan.Cli.Output.Reports;
using Floorplan.Model.Comparing;

namespace Floorplan.Cli.Commands;

/// <summary>Says what differs between two revisions of a plan, in words and numbers.</summary>
internal static class CompareCommand
{
    public static Command Build(Host host)
    {
        var was = new Argument<string>("OLD") { HelpName = "OLD", Description = "The plan as it was." };
        var now = new Argument<string>("NEW") { HelpName = "NEW", Description = "The plan as it is." };
        var output = new Option<string>("--output")
        {
            Description = "How to print: text for people, json for programs.",
            DefaultValueFactory = _ => "text"
        };
        output.AcceptOnlyFromAmong("text", "json");
        var command =
            new Command(
                "compare",
                "Say what moved, appeared, vanished or changed between two revisions of a plan, and which findings came and went.") { was,
                now, output };
        command.Validators.Add(r => FileArguments.RefuseTwice(r, r.GetValue(was), r.GetValue(now)));
        command.SetAction(parsed => Run(host, parsed.GetValue(was)!, parsed.GetValue(now)!, parsed.GetValue(output) == "json"));
        return command;
    }

    private static int Run(Host host, string was, string now, bool json)
    {
        var (old, fresh) = (Checked.Read(was, host), Checked.Read(now, host));
        foreach (var input in new[] { old, fresh }.Where(i => i.Examination?.Plan is null))
        {
            UnreadText.Write(host, input, "nothing is compared");
        }

        if (old.Examination is not { Plan: { } before } || fresh.Examination is not { Plan: { } after })
        {
            return Math.Max(old.ExitCode, fresh.ExitCode);
        }

        var changes = PlanComparison.Of(before, after).Changes;
        var findings = ComparedFindings.Of(old.Examination.Findings, fresh.Examination.Findings);
        if (json)
        {
            CompareJson.Write(host.Out, was, now, changes, findings);
            return ExitCode.Fine;
        }

        var page = Page.OfOutput(host);
        foreach (var change in changes)
        {
            page.Line(Sign(change.Kind), change.Text);
        }

        Findings(page, findings);
        page.Line($"{was} to {now}: {(changes.Count == 0 ? "nothing differs" : FindingCounts.Words(changes.Count, "difference"))}");
        return ExitCode.Fine;
    }

    private static void Findings(Page page, ComparedFindings findings)
    {
        foreach (var finding in findings.New)
        {
            page.Line(new Piece("new      ", finding.Severity.Tone()), $"{finding.SeverityWord}: {finding.Message} [{finding.Rule}]");
        }

        foreach (var finding in findings.Gone)
        {
            page.Line(new Piece("gone     ", Tone.Good), $"{finding.SeverityWord}: {finding.Message} [{finding.Rule}]");
        }
    }

    private static Piece Sign(ChangeKind kind) => kind switch
    {
        ChangeKind.Appeared => new Piece("new      ", Tone.Good),
        ChangeKind.Vanished => new Piece("gone     ", Tone.Error),
        ChangeKind.Moved => new Piece("moved    ", Tone.Strong),
        _ => new Piece("changed  ", Tone.Strong),
    };
}
