using System.Text;
using Floorplan.Checks.Findings;
using Floorplan.Checks.Mending;
using Floorplan.Cli.Hosting;
using Floorplan.Cli.Input;
using Floorplan.Cli.Output.Files;
using Floorplan.Cli.Output.Patches;
using Floorplan.Cli.Output.Printing;
using Floorplan.Cli.Output.Reports;

namespace Floorplan.Cli.Commands;

/// <summary>Writes what <see cref="Mender"/> proposes into a plan's file, whole or not at all, and says every changed line.</summary>
internal static class PlanMending
{
    public static int Run(Host host, string name)
    {
        var input = PlanFileReader.Read(name, host);
        if (input.Source is null)
        {
            // The check that follows says why it cannot be read.
            return ExitCode.Fine;
        }

        if (input.Path is null)
        {
            return Refusal.Tell(host, "--mend writes into a file, so it cannot mend standard input; --dry-run prints the change");
        }

        if (Mended(host, input) is not [.., { Proposal: { } last }] mended)
        {
            return ExitCode.Fine;
        }

        if (PlanRewrite.Replace(input, last.Text) is { } problem)
        {
            return Refusal.Tell(host, $"{input.Name}: {problem}");
        }

        var page = Page.OfError(host);
        foreach (var finding in mended)
        {
            var made = finding.Proposal!;
            page.Line($"{input.Name}:{made.Line}: mended [{finding.Rule}]: {finding.Message}");
            if (made.Before.Length > 0)
            {
                page.Line($"  - {made.Before.Trim()}");
            }

            page.Line($"  + {made.After.Trim()}");
        }

        return ExitCode.Fine;
    }

    /// <summary>
    /// Prints the change as a patch and writes nothing. Nothing but the patch is printed on standard output, so that it can be applied;
    /// the exit code is that of a check of the plan as it is.
    /// </summary>
    public static int Show(Host host, string name)
    {
        var input = PlanFileReader.Read(name, host);
        if (input.Source is not { } source)
        {
            return Refusal.Tell(host, $"{input.Name}: {input.Problem}");
        }

        var now = new Checked(input, Examination.Of(source, input.Files));
        if (now.Examination!.Plan is null)
        {
            CheckText.Write(Page.OfError(host), now);
            return now.ExitCode;
        }

        var mended = Mended(host, input);
        if (mended is [.., { Proposal: { } last }])
        {
            foreach (var finding in mended)
            {
                Page.OfError(host).Line($"{input.Name}:{finding.Proposal!.Line}: would mend [{finding.Rule}]: {finding.Message}");
            }

            string mark = input.HasMark ? Encoding.UTF8.GetString(Encoding.UTF8.Preamble) : "";
            string patch = UnifiedPatch.Of(VisibleText.Of(input.Name), mark + source.Content, mark + last.Text);

            // A pipe gets the bytes as they are, or the patch would not apply; a terminal must not be steered by them.
            host.Out.Write(host.Colour ? string.Join('\n', patch.Split('\n').Select(l => VisibleText.Of(l.TrimEnd('\r')))) : patch);
        }

        return now.ExitCode;
    }

    private static IReadOnlyList<Finding> Mended(Host host, PlanText input)
    {
        var mended = new Mender(input.Files).Mend(input.Source!);
        if (mended.Count == 0)
        {
            Page.OfError(host).Line($"{input.Name}: no small change mends a finding");
        }

        return mended;
    }
}
