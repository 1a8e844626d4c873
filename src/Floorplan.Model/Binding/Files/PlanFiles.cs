using System.Security;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Text;
using Floorplan.Model.Binding.Files.Disk;

namespace Floorplan.Model.Binding.Files;

/// <summary>
/// Reads used files from disk, only from the folder of the plan and below. Links are not followed and nothing but plain
/// files is opened, so that a plan from a stranger cannot read the rest of the disk or hang on a device.
/// </summary>
/// <param name="folder">The folder of the plan.</param>
public sealed class PlanFiles(string folder) : IPlanFiles
{
    /// <summary>Far above any real list of kinds; own bound.</summary>
    public const int LargestMegabytes = 1;

    private const int MostListed = 200;

    private readonly string root = Path.GetFullPath(folder);
    private readonly Dictionary<SourceText, string> pathInTree = [];

    /// <inheritdoc/>
    public PlanFile Read(SourceText from, string name)
    {
        if (PlanPath.Problem(name) is { } problem)
        {
            return problem;
        }

        string path = PlanPath.WithExtension(PlanPath.Beside(pathInTree.GetValueOrDefault(from, ""), name));
        try
        {
            return Open(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or SecurityException or NotSupportedException
            or ArgumentException)
        {
            return new PlanFile(null, $"`{path}` cannot be read", "check that the file exists and that you may read it");
        }
    }

    private PlanFile Open(string path)
    {
        string current = root;
        string[] steps = path.Split('/');
        for (int i = 0; i < steps.Length; i++)
        {
            string next = Path.Combine(current, steps[i]);
            bool last = i == steps.Length - 1;
            FileSystemInfo info = last ? new FileInfo(next) : new DirectoryInfo(next);
            if (info.LinkTarget is not null || (info.Exists && info.Attributes.HasFlag(FileAttributes.ReparsePoint)))
            {
                return new PlanFile(null, $"`{path}` is a link, and links are not followed", "copy the file itself into the plan's folder");
            }

            if (last && Directory.Exists(next))
            {
                return new PlanFile(null, $"`{path}` is a folder", "name a file in it");
            }

            if (!info.Exists)
            {
                return new PlanFile(null, $"there is no file `{path}` in the plan's folder", NearNames.Hint(steps[i], Listed(current)));
            }

            current = next;
        }

        return Load(current, path);
    }

    private PlanFile Load(string file, string path)
    {
        var read = PlainFile.Read(file, LargestMegabytes);
        if (read.Text is null)
        {
            return new PlanFile(null, $"`{path}`: {read.Problem}", "name a text file with kinds in it");
        }

        var source = new SourceText(read.Text, path);
        pathInTree[source] = path;
        return new PlanFile(source);
    }

    private static IEnumerable<string> Listed(string directory)
        => Directory.Exists(directory)
            ? Directory.EnumerateFileSystemEntries(directory).Take(MostListed).Select(p => Path.GetFileName(p)!)
            : [];
}
