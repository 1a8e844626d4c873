using System.Runtime.InteropServices;

namespace Floorplan.Cli.Hosting;

/// <summary>The process's own input and output. What is wrong with one is told to whoever uses it.</summary>
internal static class StandardStreams
{
    private const int InNumber = 0;
    private const int OutNumber = 1;
    private const int ErrorNumber = 2;

    /// <summary>From fcntl.h, the same on Linux and macOS.</summary>
    private const int GetFlags = 1;
    private const int ClosesOnExec = 1;

    public static Stream In() => Closed(InNumber) ? ToldStream.Closed("standard input") : Console.OpenStandardInput();

    public static Stream Out() => Open(OutNumber, "standard output", Console.OpenStandardOutput);

    public static Stream Error() => Open(ErrorNumber, "standard error", Console.OpenStandardError);

    private static ToldStream Open(int number, string name, Func<Stream> open)
        => !Closed(number) && open() is var stream && stream != Stream.Null ? new ToldStream(name, stream) : ToldStream.Closed(name);

    /// <summary>
    /// Closed by the shell, as <c>&gt;&amp;-</c> does. The runtime may have taken the free number for a pipe of its own by now; what
    /// it opens is closed on exec, and what came through an exec cannot be.
    /// </summary>
    private static bool Closed(int number)
    {
        try
        {
            return !OperatingSystem.IsWindows() && Control(number, GetFlags) is var flags && (flags < 0 || (flags & ClosesOnExec) != 0);
        }
        catch (Exception e) when (e is DllNotFoundException or EntryPointNotFoundException)
        {
            return false;
        }
    }

    [DllImport("libc", EntryPoint = "fcntl")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Control(int number, int command);
}
