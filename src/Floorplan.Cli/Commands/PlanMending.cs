using Floorplan.Checks.Mending;
using Floorplan.Cli.Hosting;
using Floorplan.Cli.Input;
using Floorplan.Cli.Output.Drawings;
using Floorplan.Cli.Output.Printing;

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
            Page.OfError(host).Line(new Piece("floorplan: ", Tone.Error), "--mend writes into a file, so it cannot mend standard input");
            return ExitCode.CouldNotRun;
        }

        var mended = new Mender(input.Files).Mend(input.Source);
        if (mended is not [.., { Proposal: { } last }])
        {
            Page.OfError(host).Line($"{input.Name}: no small change mends a finding");
            return ExitCode.Fine;
        }

        if (WholeFile.Replace(input, last.Text) is { } problem)
        {
            Page.OfError(host).Line(new Piece("floorplan: ", Tone.Error), $"{input.Name}: {problem}");
            return ExitCode.CouldNotRun;
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
}
