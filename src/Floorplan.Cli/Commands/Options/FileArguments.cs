using System.CommandLine;
using System.CommandLine.Parsing;
using Floorplan.Cli.Input;
using Floorplan.Language.Diagnostics;

namespace Floorplan.Cli.Commands.Options;

/// <summary>The list of plans that most commands take.</summary>
internal static class FileArguments
{
    public static Argument<string[]> Build()
    {
        var files = new Argument<string[]>("FILE")
        {
            Arity = ArgumentArity.OneOrMore,
            Description = "One or more .unit files; - reads standard input.",
        };
        files.Validators.Add(RefuseOptions);
        files.Validators.Add(result => RefuseTwice(result, [.. result.Tokens.Select(t => t.Value)]));
        return files;
    }

    /// <summary>Standard input can be read once.</summary>
    public static void RefuseTwice(SymbolResult result, params ReadOnlySpan<string?> names)
    {
        if (names.Count(PlanFileReader.StandardInput) > 1)
        {
            result.AddError("- is standard input, which can be read once only: name it once");
        }
    }

    // A slip in an option is no file; a file whose name starts with two dashes is written ./--name.
    private static void RefuseOptions(ArgumentResult result)
    {
        var options = (result.Parent as CommandResult)?.Command.Options.Select(o => o.Name) ?? [];
        foreach (string slip in result.Tokens.Select(t => t.Value).Where(v => v.StartsWith("--", StringComparison.Ordinal)))
        {
            result.AddError($"there is no option {slip}{(NearNames.Hint(slip, options) is { } near ? "; " + near : "")}");
        }
    }
}
