using System.Text;
using Floorplan.Cli;
using Floorplan.Cli.Hosting;

namespace Floorplan.Tests.Cli;

/// <summary>One command line run through the program's entry point, in this process.</summary>
internal sealed record CliRun(int Exit, string Out, string Error)
{
    public static CliRun Of(params string[] args) => In(Path.GetTempPath(), "", args);

    public static CliRun WithInput(string input, params string[] args) => In(Path.GetTempPath(), input, args);

    public static CliRun In(string folder, string input, params string[] args)
        => Run(folder, Encoding.UTF8.GetBytes(input), colour: false, args);

    public static CliRun InColour(params string[] args) => Run(Path.GetTempPath(), [], colour: true, args);

    private static CliRun Run(string folder, byte[] input, bool colour, string[] args)
    {
        var output = new StringWriter { NewLine = "\n" };
        var error = new StringWriter { NewLine = "\n" };
        using var host = new Host
        {
            In = new MemoryStream(input),
            Out = output,
            Error = error,
            Colour = colour,
            ErrorColour = colour,
            Width = 60,
            Folder = folder,
        };
        return new CliRun(App.Run(args, host), output.ToString(), error.ToString());
    }
}
