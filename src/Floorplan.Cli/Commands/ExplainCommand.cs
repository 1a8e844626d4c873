using System.CommandLine;
using Floorplan.Checks.Framework;
using Floorplan.Cli.Hosting;
using Floorplan.Cli.Output;
using Floorplan.Language.Diagnostics;

namespace Floorplan.Cli.Commands;

/// <summary>Shows the page of a rule.</summary>
internal static class ExplainCommand
{
    public static Command Build(Host host)
    {
        var name = new Argument<string>("RULE") { HelpName = "RULE", Description = "The rule, as findings name it." };
        name.CompletionSources.Add(_ => RuleCatalogue.All.Select(r => r.Name));
        var command = new Command("explain", "Show what a rule finds, why it matters, its limits and sources, and how to mend it.") { name };
        command.SetAction(parsed => Run(host, parsed.GetValue(name)!));
        return command;
    }

    private static int Run(Host host, string name)
    {
        if (RuleCatalogue.Find(name) is { } rule)
        {
            RulePageText.Write(Page.OfOutput(host), RulePage.Of(rule));
            return ExitCode.Fine;
        }

        string near = NearNames.Hint(name, RuleCatalogue.All.Select(r => r.Name)) ?? "floorplan rules lists them";
        Page.OfError(host).Line(new Piece("floorplan: ", Tone.Error), $"there is no rule {name}; {near}");
        return ExitCode.CouldNotRun;
    }
}
