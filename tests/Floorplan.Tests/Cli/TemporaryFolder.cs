using System.Diagnostics;
using System.Text;

namespace Floorplan.Tests.Cli;

/// <summary>A folder of a test's own, gone after it.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("floorplan-test-").FullName;

    /// <summary>Names of all files below it, with forward slashes, in order.</summary>
    public IReadOnlyList<string> Files => [.. Directory.EnumerateFiles(Path, "*", SearchOption.AllDirectories)
        .Select(f => System.IO.Path.GetRelativePath(Path, f).Replace('\\', '/'))
        .Order(StringComparer.Ordinal)];

    public string At(string name) => System.IO.Path.Combine(Path, name);

    public string Write(string name, string text) => Write(name, new UTF8Encoding(false).GetBytes(text));

    public string Write(string name, byte[] bytes)
    {
        File.WriteAllBytes(At(name), bytes);
        return At(name);
    }

    /// <summary>Gives a file a second name, a hard link.</summary>
    public void Link(string name, string second)
    {
        using var link = Process.Start("ln", [At(name), At(second)]);
        link.WaitForExit();
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
