using Xunit;

namespace Floorplan.Tests.Architecture;

/// <summary>A folder holds things of one subject, few enough to be seen at once.</summary>
public class FolderTests
{
    private const int Most = 15;

    /// <summary>Their files are alike: one symbol, one rule, one kind of service or the details of one statement in each.</summary>
    private static readonly HashSet<string> Alike =
    [
        "Floorplan.Drawing/Symbols", "Floorplan.Checks/Rules/Hygiene", "Floorplan.Checks/Rules/WaterAndDrain",
        "Floorplan.Model/Services",
        "Floorplan.Language/Details",
    ];

    private static IEnumerable<(string Folder, int Files)> Folders => Repository.Sources("src")
        .GroupBy(p => Path.GetRelativePath(Repository.At("src"), Path.GetDirectoryName(p)!).Replace(Path.DirectorySeparatorChar, '/'))
        .Select(g => (g.Key, g.Count()));

    [Fact]
    public void No_folder_has_more_than_15_files_unless_they_are_alike() => Assert.Equal(
        [],
        Folders.Where(f => f.Files > Most && !Alike.Contains(f.Folder)).Select(f => $"{f.Folder}: {f.Files}"));

    /// <summary>A folder that is small again is taken off the list.</summary>
    [Fact]
    public void No_exception_stands_that_is_not_needed() => Assert.Equal(
        [],
        Alike.Where(e => !Folders.Any(f => f.Folder == e && f.Files > Most)));

    /// <summary>The program's first file has no namespace.</summary>
    [Fact]
    public void Namespaces_follow_folders() => Assert.Equal(
        [],
        Repository.Sources("src")
            .Where(p => File.ReadAllLines(p).FirstOrDefault(l => l.StartsWith("namespace ", StringComparison.Ordinal)) is { } line
                && line != $"namespace {Dotted(Path.GetRelativePath(Repository.At("src"), Path.GetDirectoryName(p)!))};")
            .Select(p => Path.GetRelativePath(Repository.Root, p)));

    private static string Dotted(string path) => path.Replace(Path.DirectorySeparatorChar, '.');
}
