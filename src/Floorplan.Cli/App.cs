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
        int exit = Told(host, () =>
        {
            int code = host.Trouble is { } trouble ? Refusal.Tell(host, trouble) : Invoke(args, host);

            // What was said and did not arrive is a fault like any other.
            host.Out.Flush();
            return code;
        });
        return Math.Max(exit, Told(host, () =>
        {
            host.Error.Flush();
            return exit;
        }));
    }

    private static int Invoke(IReadOnlyList<string> args, Host host)
    {
        var root = Build(host);

        // A file whose name starts with @ is a file, not a list of further arguments.
        var parsed = root.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
        return parsed.Action is ParseErrorAction
            ? UsageErrors.Report(parsed, host)
            : parsed.Invoke(
                new InvocationConfiguration { Output = host.Out, Error = host.Error, EnableDefaultExceptionHandler = false });
    }

    /// <summary>Runs a part of the work; whatever stops it is told, as far as somebody listens.</summary>
    private static int Told(Host host, Func<int> work)
    {
        try
        {
            return work();
        }
        catch (Exception stopped)
        {
            try
            {
                return stopped is IOException ? Refusal.Tell(host, stopped.Message) : FailByFault(host, stopped);
            }
            catch (StreamLostException)
            {
                return ExitCode.CouldNotRun;
            }
        }
    }

    private static int FailByFault(Host host, Exception bug)
    {
        host.Error.WriteLine("floorplan: a fault of the program itself, not of the plan; please report it with the plan and this text");
        host.Error.WriteLine(bug);
        return ExitCode.CouldNotRun;
    }

    private static RootCommand Build(Host host)
    {
        var root = new RootCommand(Summary)
        {
            NewCommand.Build(host),
            CheckCommand.Build(host),
            DrawCommand.Build(host),
            CompareCommand.Build(host),
            DayCommand.Build(host),
            SizeCommand.Build(host),
            ReportCommand.Build(host),
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
