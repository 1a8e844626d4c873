using System.Text.Json;
using System.Xml.Linq;

namespace Floorplan.Tests.Architecture;

/// <summary>One package that a build takes from the registry.</summary>
/// <param name="Licence">An SPDX expression.</param>
/// <param name="In"><c>program</c> when it is part of what a user runs, else <c>tests</c>.</param>
internal sealed record Package(string Name, string Version, string Licence, string In)
{
    public override string ToString() => string.Join('\t', Name, Version, Licence, In);
}

/// <summary>The packages that were restored for this machine, by the word of the restore, and the list that is kept of them.</summary>
internal static class PackageList
{
    /// <summary>The kept list: a line a package, after one line of headings.</summary>
    public static string File { get; } = Repository.At(".ci", "packages.tsv");

    private const string Headings = "package\tversion\tlicence\tin";

    private static readonly string[] Program = ["src/Floorplan.Cli", "src/Floorplan.Print"];

    /// <summary>Projects that were restored; a test run of the tests project alone leaves the benchmarks out.</summary>
    private static readonly string[] Others = ["tests/Floorplan.Tests", "tests/Floorplan.Benchmarks"];

    public static IReadOnlyList<Package> Kept()
        => [.. System.IO.File.ReadLines(File).Skip(1).Select(l => l.Split('\t')).Select(c => new Package(c[0], c[1], c[2], c[3]))];

    /// <summary>Everything restored, the compiler of native programs excepted, which the SDK chooses.</summary>
    public static IReadOnlyList<Package> Restored()
    {
        var kept = Kept().ToDictionary(p => (p.Name, p.Version), p => p.Licence);
        return [.. Program.SelectMany(p => Of(p, "program", kept)).Concat(Others.SelectMany(p => Of(p, "tests", kept)))
            .DistinctBy(p => (p.Name, p.Version))
            .Where(p => !p.Name.Contains("ILCompiler", StringComparison.Ordinal) && p.Name != "Microsoft.NET.ILLink.Tasks")
            .OrderBy(p => p.Name, StringComparer.Ordinal)];
    }

    public static void Write(IEnumerable<Package> packages)
        => System.IO.File.WriteAllText(File, string.Join('\n', packages.Select(p => p.ToString()).Prepend(Headings)) + "\n");

    private static IEnumerable<Package> Of(string project, string part, Dictionary<(string, string), string> kept)
    {
        string assets = Repository.At(project, "obj", "project.assets.json");
        if (!System.IO.File.Exists(assets))
        {
            yield break;
        }

        using var document = JsonDocument.Parse(System.IO.File.ReadAllText(assets));
        var folders = document.RootElement.GetProperty("packageFolders").EnumerateObject().Select(f => f.Name).ToList();
        foreach (var library in document.RootElement.GetProperty("libraries").EnumerateObject())
        {
            if (library.Value.GetProperty("type").GetString() == "package")
            {
                string[] name = library.Name.Split('/');
                string path = library.Value.GetProperty("path").GetString()!;
                string licence = Expression(folders.Select(f => Path.Combine(f, path)).First(Directory.Exists))
                    ?? kept.GetValueOrDefault((name[0], name[1]), "?");
                yield return new Package(name[0], name[1], licence, part);
            }
        }
    }

    /// <summary>What the package says of itself; null where it has a file or an address instead, which a person has to read.</summary>
    private static string? Expression(string folder)
        => XDocument.Load(Directory.EnumerateFiles(folder, "*.nuspec").Single()).Descendants()
            .FirstOrDefault(e => e.Name.LocalName == "license" && e.Attribute("type")?.Value == "expression")?.Value;
}
