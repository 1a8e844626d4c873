namespace Floorplan.Tests.Architecture;

/// <summary>The checked-out sources that these tests were built from.</summary>
internal static class Repository
{
    public static string Root { get; } = FindRoot();

    public static string At(params string[] parts) => Path.Combine([Root, .. parts]);

    /// <summary>C# files below a folder of the root, without what a build makes.</summary>
    public static IEnumerable<string> Sources(string folder) => Directory.EnumerateFiles(At(folder), "*.cs", SearchOption.AllDirectories)
        .Where(p => !Path.GetRelativePath(Root, p).Split(Path.DirectorySeparatorChar).Any(part => part is "bin" or "obj"));

    private static string FindRoot()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Floorplan.sln")))
            {
                return folder.FullName;
            }
        }

        throw new InvalidOperationException("these tests run inside a checkout: no Floorplan.sln above " + AppContext.BaseDirectory);
    }
}
