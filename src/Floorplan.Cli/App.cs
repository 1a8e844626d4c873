using System.CommandLine;
using System.CommandLine.Invocation;
using Floorplan.Cli.Commands;
using Floorplan.Cli.Hosting;
using Floorplan.Cli.Output.Printing;

namespace Floorplan.Cli;

/// <summary>The command line as a whole.</summary>
public static class App
{
    private const string Summary = "Checks and draws the layout of a small food-processing unit from one text file.";

    /// <summary>Runs one command line and returns the exit code. Does not dispose the host.</summary>
    public static int Run(IReadOnlyList<string> args, Host host)
    {
        var root = Build(host);

        // A file whose name starts with @ is a file, not a list of further arguments.
        var parsed = root.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (parsed.Action is ParseErrorAction)
        {
            return UsageErrors.Report(parsed, host);
        }

        try
        {
            return parsed.Invoke(
                new InvocationConfiguration { Output = host.Out, Error = host.Error, EnableDefaultExceptionHandler = false });
        }
        catch (Exception bug) when (bug is not IOException)
        {
            host.Error.WriteLine("floorplan: a fault of the program itself, not of the plan; please report it with the plan and this text");
            host.Error.WriteLine(bug);
            return ExitCode.CouldNotRun;
        }
        catch (IOException)
        {
            // Standard output was closed by its reader; commands turn their own file trouble into sentences.
            return ExitCode.CouldNotRun;
        }
    }

    private static RootCommand Build(Host host)
    {
        var root = new RootCommand(Summary)
        {
            NewCommand.Build(host),
            CheckCommand.Build(host),
            DrawCommand.Build(host),
            CompareCommand.Build(host),
            ExplainCommand.Build(host),
            RulesCommand.Build(host),
            FormatCommand.Build(host),
            GalleryCommand.Build(host),
        };

        // Nothing was asked: show what can be.
        root.SetAction(parsed =>
        {
            root.Parse("--help").Invoke(parsed.InvocationConfiguration);
            return ExitCode.CouldNotRun;
        });
        return root;
    }
}
