using Xunit;

namespace Floorplan.Tests.Architecture;

/// <summary>What a newcomer sees first stays short.</summary>
public class TopLevelTests
{
    private static readonly string[] Agreed =
    [
        "DEVELOPERS.md", "Directory.Build.props", "Directory.Packages.props", "Floorplan.sln", "LICENSE", "README.md",
        "gallery", "src", "templates", "tests",
    ];

    /// <summary>Made by a build or a run and not part of the checkout, as .gitignore lists them.</summary>
    private static readonly string[] Made = ["bin", "obj", "out", "TestResults", "BenchmarkDotNet.Artifacts"];

    [Fact]
    public void The_top_level_holds_what_was_agreed_and_nothing_else()
    {
        var found = Directory.EnumerateFileSystemEntries(Repository.Root)
            .Select(Path.GetFileName)
            .Where(n => !n!.StartsWith('.') && !Made.Contains(n));
        Assert.Equal(Agreed.Order(StringComparer.Ordinal), found.Order(StringComparer.Ordinal));
    }
}
