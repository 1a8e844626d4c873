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
    public string Folder { get; init; } = Environment.CurrentDirectory;

    public static Host OfProcess()
    {
        bool plain = IsSet("NO_COLOR") || Environment.GetEnvironmentVariable("TERM") == "dumb";
        return new Host
        {
            In = Console.OpenStandardInput(),
            Out = Writer(Console.OpenStandardOutput()),
            Error = Writer(Console.OpenStandardError()),
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

    // Whoever read our output may have stopped, as `head` does; that is no fault of ours.
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

    // The same bytes on every system: UTF-8 without a mark, lines ended by LF.
    private static StreamWriter Writer(Stream stream) => new(stream, new UTF8Encoding(false), BufferBytes) { NewLine = "\n" };

    // https://no-color.org: present and not empty, whatever its value.
    private static bool IsSet(string name) => !string.IsNullOrEmpty(Environment.GetEnvironmentVariable(name));
}
