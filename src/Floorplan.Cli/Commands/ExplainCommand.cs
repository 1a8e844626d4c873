using System.CommandLine;
using Floorplan.Checks.Framework;
using Floorplan.Cli.Hosting;
using Floorplan.Cli.Output.Printing;
using Floorplan.Cli.Output.RulePages;
using Floorplan.Language.Diagnostics;

namespace Floorplan.Cli.Commands;

/// <summary>Shows the page of a rule, or of a code that a mistake in the text carries.</summary>
internal static class ExplainCommand
{
    public static Command Build(Host host)
    {
        var name = new Argument<string>("NAME")
        {
            HelpName = "NAME",
            Description = "What stands in [ ] after a finding or a mistake: a rule such as overlap, or a code such as unknown-name.",
        };
        name.CompletionSources.Add(_ => Names);
        var command =
            new Command(
                "explain", "Show what a rule or a mistake means, why it matters, where its limits come from, and how to mend it.") { name };
        command.SetAction(parsed => Run(host, parsed.GetValue(name)!));
        return command;
    }

    private static IEnumerable<string> Names => RuleCatalogue.All.Select(r => r.Name).Concat(DiagnosticPages.All.Select(p => p.Code));

    private static int Run(Host host, string name)
    {
        string wanted = name.Trim('[', ']').ToLowerInvariant();
        var page = RuleCatalogue.Find(wanted) is { } rule ? RulePage.Of(rule)
            : DiagnosticPages.Find(wanted) is { } diagnostic ? DiagnosticPages.PageOf(diagnostic)
            : null;
        if (page is not null)
        {
            RulePageText.Write(Page.OfOutput(host), page);
            return ExitCode.Fine;
        }

        string near = RuleCatalogue.NewNameOf(wanted) is { } now
            ? $"that rule is now called {now}: floorplan explain {now}"
            : NearNames.Hint(wanted, Names)
                ?? "it explains what stands in [ ] after a finding or a mistake; floorplan rules lists the rules";
        return Refusal.Tell(host, $"there is nothing called {name} to explain; {near}");
    }
}
