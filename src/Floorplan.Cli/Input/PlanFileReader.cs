using System.Globalization;
using Floorplan.Cli.Hosting;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Text;

namespace Floorplan.Cli.Input;

/// <summary>Reads plans from files and from standard input. Whatever the file holds, the answer is text or a sentence.</summary>
internal static class PlanFileReader
{
    /// <summary>The name that stands for standard input on the command line.</summary>
    public const string StandardInput = "-";

    /// <summary>A plan of 10 000 stations is about 2 MB; more than this is some other file. Own assumption.</summary>
    public const int MostBytes = 8 << 20;

    public static PlanText Read(string name, Host host)
    {
        if (name == StandardInput)
        {
            return Read("stdin", null, () => host.In);
        }

        string? full = FullOrNull(name, host);
        if (full is null)
        {
            return Refuse(name, "this is not a file name");
        }

        if (Directory.Exists(full))
        {
            return Refuse(name, "this is a folder; name a .unit file in it");
        }

        // The ending that files had before 2026-11-27: another program's files have it too.
        if (Path.GetExtension(full).Equals(".plan", StringComparison.OrdinalIgnoreCase))
        {
            return Refuse(name, $"unit files end in .unit; name it {Path.GetFileNameWithoutExtension(full)}.unit");
        }

        return File.Exists(full) ? Read(name, full, () => File.OpenRead(full)) : Refuse(name, Missing(full));
    }

    private static PlanText Read(string name, string? path, Func<Stream> open)
    {
        try
        {
            using var stream = open();
            byte[] bytes = ReadAtMost(stream, MostBytes + 1);
            return bytes.Length > MostBytes
                ? Refuse(
                    name, string.Create(
                        CultureInfo.InvariantCulture, $"more than {MostBytes >> 20} MB; a plan is far smaller, so this is some other file"))
                : Decode(name, path, bytes);
        }
        catch (UnauthorizedAccessException)
        {
            return Refuse(name, "you have no permission to read it");
        }
        catch (IOException problem)
        {
            return Refuse(name, $"cannot be read: {problem.Message}");
        }
    }

    private static PlanText Decode(string name, string? path, byte[] bytes)
    {
        var (text, hasMark, problem) = Utf8Text.Decode(bytes);
        return text is null ? Refuse(name, problem!) : new PlanText(name, path, new SourceText(text, name), hasMark, null);
    }

    private static byte[] ReadAtMost(Stream stream, int most)
    {
        using var held = new MemoryStream();
        byte[] buffer = new byte[1 << 16];
        int read;
        while (held.Length < most && (read = stream.Read(buffer)) > 0)
        {
            held.Write(buffer, 0, read);
        }

        return held.ToArray();
    }

    private static string? FullOrNull(string name, Host host)
    {
        try
        {
            return host.Full(name);
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    private static string Missing(string full)
    {
        string folder = Path.GetDirectoryName(full) ?? "";
        string[] plans = Directory.Exists(folder)
            ? [.. Directory.EnumerateFiles(folder, "*.unit").Select(Path.GetFileName).OfType<string>()]
            : [];
        string? near = NearNames.Hint(Path.GetFileName(full), plans);
        return "there is no such file" + (near is null ? "" : "; " + near);
    }

    private static PlanText Refuse(string name, string problem) => new(name, null, null, false, problem);
}
