using Floorplan.Cli.Hosting;

namespace Floorplan.Cli.Output.Printing;

/// <summary>What stops a command is told in one sentence on standard error.</summary>
internal static class Refusal
{
    /// <returns><see cref="ExitCode.CouldNotRun"/>.</returns>
    public static int Tell(Host host, string sentence)
    {
        Page.OfError(host).Line(new Piece("floorplan: ", Tone.Error), sentence);
        return ExitCode.CouldNotRun;
    }
}
