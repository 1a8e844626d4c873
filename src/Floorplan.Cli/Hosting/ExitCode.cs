namespace Floorplan.Cli.Hosting;

/// <summary>What a run tells the shell. Several files give the worst of theirs.</summary>
internal static class ExitCode
{
    /// <summary>Nothing wrong; warnings and notes may stand.</summary>
    public const int Fine = 0;

    /// <summary>The plan has errors, or does not read, or (for <c>format --check</c>) is not in shape.</summary>
    public const int Errors = 1;

    /// <summary>The command line, a file or an output folder does not let it run.</summary>
    public const int CouldNotRun = 2;
}
