using System.CommandLine;
using Floorplan.Cli.Hosting;
using Floorplan.Language.Diagnostics;

namespace Floorplan.Cli.Output.Printing;

/// <summary>A command line that cannot be understood: what is wrong, near names, and where to read on.</summary>
internal static class UsageErrors
{
    public static int Report(ParseResult parsed, Host host)
    {
        var page = Page.OfError(host);
        var command = parsed.CommandResult.Command;
        if (command is RootCommand && parsed.UnmatchedTokens is [var first, ..])
        {
            page.Line(new Piece("floorplan: ", Tone.Error), $"there is no command {first}");
            if (first.EndsWith(".unit", StringComparison.OrdinalIgnoreCase))
            {
                page.Line($"  floorplan check {first} says what is wrong with it");
            }
        }
        else
        {
            foreach (string message in parsed.Errors.Select(e => OneLine(e.Message)).Distinct())
            {
                page.Line(new Piece("floorplan: ", Tone.Error), message);
            }
        }

        string[] known = [.. command.Subcommands.Where(c => !c.Hidden).Select(c => c.Name), .. command.Options.Select(o => o.Name)];
        foreach (string token in parsed.UnmatchedTokens)
        {
            if (NearNames.Hint(token, known) is { } near)
            {
                page.Line($"  {token}: {near}");
            }
        }

        string name = command is RootCommand ? "" : command.Name + " ";
        page.Line($"  floorplan {name}--help shows what it takes");
        return ExitCode.CouldNotRun;
    }

    private static string OneLine(string message)
        => string.Join(' ', message.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).TrimEnd('.');
}
