using Floorplan.Cli.Hosting;
using Floorplan.Cli.Input;
using Floorplan.Cli.Output.Printing;

namespace Floorplan.Cli.Commands;

/// <summary>Draws once, and again each time a file that was read is saved, until it is to stop.</summary>
internal static class Following
{
    /// <summary>Returns 0 when it was stopped as it is meant to be: what the plan has of findings is said at each drawing.</summary>
    public static int Run(Host host, DrawRound round, IReadOnlyList<string> names)
    {
        if (names.Contains(PlanFileReader.StandardInput))
        {
            return Refusal.Tell(host, "--follow draws a file again when it is saved, and standard input cannot be; name a file");
        }

        using var interrupts = new Interrupts();
        using var files = new FollowedFiles();
        files.Look(names.Select(host.Full));
        do
        {
            // What is saved while it draws is drawn after it.
            int exit = round.DrawAndKeep();
            if (round.FilesRead.Count == 0 && exit == ExitCode.CouldNotRun)
            {
                return exit;
            }

            files.LookAlso(round.FilesRead);
            Page.OfOutput(host).Line("waiting for the next save; Ctrl+C ends it");
            host.Out.Flush();
            host.Error.Flush();
        }
        while (Next(files, round, names.Select(host.Full), interrupts.Wish));
        return ExitCode.Fine;
    }

    private static bool Next(FollowedFiles files, DrawRound round, IEnumerable<string> paths, CancellationToken stop)
    {
        bool saved = files.Wait(stop);
        files.Look([.. paths, .. round.FilesRead]);
        return saved;
    }
}
