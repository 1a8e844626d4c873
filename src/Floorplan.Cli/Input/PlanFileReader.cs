using Floorplan.Cli.Hosting;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Text;
using Floorplan.Model.Binding.Files.Disk;

namespace Floorplan.Cli.Input;

/// <summary>Reads plans from files and from standard input. Whatever the file holds, the answer is text or a sentence.</summary>
internal static class PlanFileReader
{
    /// <summary>The name that stands for standard input on the command line.</summary>
    public const string StandardInput = "-";

    /// <summary>A plan of 10 000 stations is about 2 MB; more than this is some other file. Own assumption.</summary>
    public const int MostMegabytes = 8;

    public static PlanText Read(string name, Host host)
    {
        if (name == StandardInput)
        {
            return Read("stdin", null, () => PlainFile.Read(host.In, MostMegabytes));
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

        return File.Exists(full) ? Read(name, full, () => PlainFile.Read(full, MostMegabytes)) : Refuse(name, Missing(full));
    }

    private static PlanText Read(string name, string? path, Func<PlainFile.Reading> read)
    {
        try
        {
            var file = read();
            return file.Text is null
                ? Refuse(name, file.Problem!)
                : new PlanText(name, path, new SourceText(file.Text, name), file.Bytes, file.HasMark, null);
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

    private static PlanText Refuse(string name, string problem) => new(name, null, null, [], false, problem);
}
