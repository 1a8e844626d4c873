using System.CommandLine;
using Floorplan.Checks.Framework;
using Floorplan.Cli.Hosting;
using Floorplan.Cli.Output.Printing;

namespace Floorplan.Cli.Commands;

/// <summary>Lists every rule, by group.</summary>
internal static class RulesCommand
{
    public static Command Build(Host host)
    {
        var command = new Command("rules", "List every rule by group.");
        command.SetAction(_ => Run(Page.OfOutput(host)));
        return command;
    }

    private static int Run(Page page)
    {
        foreach (var group in RuleCatalogue.All.GroupBy(r => r.Group))
        {
            page.Heading(group.Key.Title());
            page.Rows([.. group.Select(r => (r.Name, r.Says))]);
            page.Gap();
        }

        page.Line("floorplan explain NAME shows one with its limits, sources and examples.");
        return ExitCode.Fine;
    }
}
