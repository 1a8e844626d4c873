using System.CommandLine;

namespace Floorplan.Cli.Commands;

/// <summary>The list of plans that most commands take.</summary>
internal static class FileArguments
{
    public static Argument<string[]> Build() => new("FILE")
    {
        Arity = ArgumentArity.OneOrMore,
        Description = "One or more .plan files; - reads standard input.",
    };
}
