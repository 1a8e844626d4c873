using System.Text;

namespace Floorplan.Cli.Hosting;

/// <summary>Everything outside the program that a command touches, so that a test can run a command without a process.</summary>
public sealed class Host : IDisposable
{
    private const int BufferBytes = 1 << 16;

    public required Stream In { get; init; }

    public required TextWriter Out { get; init; }

    public required TextWriter Error { get; init; }

    /// <summary>Whether standard output is a terminal that shows colour.</summary>
    public bool Colour { get; init; }

    /// <summary>Whether standard error is one.</summary>
    public bool ErrorColour { get; init; }

    /// <summary>Columns of the terminal; prose wraps there, and only there.</summary>
    public int Width { get; init; } = 80;

    /// <summary>The folder that relative file names start from.</summary>
    public required string Folder { get; init; }

    /// <summary>Why no command can run at all; null when they can.</summary>
    public string? Trouble { get; init; }

    public static Host OfProcess()
    {
        string? folder = WorkingFolder();
        bool plain = IsSet("NO_COLOR") || Environment.GetEnvironmentVariable("TERM") == "dumb";
        return new Host
        {
            In = StandardStreams.In(),
            Out = Writer(StandardStreams.Out()),
            Error = Writer(StandardStreams.Error()),
            Folder = folder ?? Path.DirectorySeparatorChar.ToString(),
            Trouble = folder is null ? "the folder that you work in is not there any more; change to one that is" : null,
            Colour = !plain && !Console.IsOutputRedirected,
            ErrorColour = !plain && !Console.IsErrorRedirected,
            Width = Console.IsOutputRedirected ? 80 : Math.Max(40, Console.WindowWidth),
        };
    }

    public string Full(string path) => Path.GetFullPath(path, Folder);

    public void Dispose()
    {
        In.Dispose();
        Flush(Out);
        Flush(Error);
    }

    // What is still to be written here was told before, or cannot be told.
    private static void Flush(TextWriter writer)
    {
        try
        {
            writer.Dispose();
        }
        catch (IOException)
        {
        }
    }

    private static string? WorkingFolder()
    {
        try
        {
            return Environment.CurrentDirectory;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    // The same bytes on every system: UTF-8 without a mark, lines ended by LF.
    private static StreamWriter Writer(Stream stream) => new(stream, new UTF8Encoding(false), BufferBytes) { NewLine = "\n" };

    // https://no-color.org: present and not empty, whatever its value.
    private static bool IsSet(string name) => !string.IsNullOrEmpty(Environment.GetEnvironmentVariable(name));
}
