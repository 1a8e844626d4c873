using Xunit;

namespace Floorplan.Tests.Architecture;

/// <summary>Files stay small enough to read in one go.</summary>
public class FileSizeTests
{
    private const int MostLines = 400;
    private const int MostMedianLines = 80;

    private static List<(string File, int Lines)> Sizes { get; } =
        [.. Repository.Sources("src").Select(p => (Path.GetRelativePath(Repository.Root, p), File.ReadLines(p).Count()))];

    [Fact]
    public void No_source_file_is_longer_than_400_lines()
        => Assert.Equal([], Sizes.Where(s => s.Lines > MostLines).Select(s => $"{s.File}: {s.Lines}"));

    [Fact]
    public void The_median_source_file_is_short()
    {
        var lines = Sizes.Select(s => s.Lines).Order().ToList();
        Assert.InRange(lines[lines.Count / 2], 1, MostMedianLines);
    }
}
