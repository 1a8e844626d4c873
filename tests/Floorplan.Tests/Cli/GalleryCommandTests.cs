using Floorplan.Cli.Gallery;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Cli;

public class GalleryCommandTests
{
    /// <summary>
    /// Generates the gallery twice: it shows every template, mistake and rule, the same bytes each time, and those of the checkout.
    /// </summary>
    [Fact]
    public void The_gallery_is_complete_repeatable_and_as_committed()
    {
        using var one = new TemporaryFolder();
        using var two = new TemporaryFolder();
        Assert.Equal(0, CliRun.In(one.Path, "", "gallery", ".").Exit);
        Assert.Equal(0, CliRun.In(two.Path, "", "gallery", ".").Exit);
        Assert.Equal(one.Files, two.Files);
        Assert.All(one.Files, f => Assert.Equal(File.ReadAllBytes(one.At(f)), File.ReadAllBytes(two.At(f))));

        Assert.Equal(
            Plans.Templates.Sum(t => DrawnPlans.Template(Path.GetFileNameWithoutExtension(t)).Count),
            one.Files.Count(f => f.StartsWith("templates/", StringComparison.Ordinal)));
        Assert.True(ClassicMistakes.All.Count >= 6);
        Assert.All(ClassicMistakes.All, m => Assert.Contains($"mistakes/{m.Name}/before.svg", one.Files));

        Assert.All(
            ClassicMistakes.All, m => Assert.Contains(
                one.Files.Where(f => f.StartsWith($"mistakes/{m.Name}/before", StringComparison.Ordinal)),
                f => File.ReadAllText(one.At(f)).Contains(">Findings</text>", StringComparison.Ordinal)));

        var committed = Directory.EnumerateFiles(Repository.At("gallery"), "*", SearchOption.AllDirectories)
            .Select(f => Path.GetRelativePath(Repository.At("gallery"), f).Replace('\\', '/'))
            .Order(StringComparer.Ordinal);
        Assert.Equal(one.Files, committed);
        Assert.All(
            one.Files, f
                => Assert.True(
                    File.ReadAllText(one.At(f)) == File.ReadAllText(Repository.At("gallery", f)),
                    $"gallery/{f} is out of date; run: floorplan gallery gallery"));
    }

    [Fact]
    public void A_folder_with_other_files_is_left_alone()
    {
        using var folder = new TemporaryFolder();
        folder.Write("notes.txt", "mine");
        var run = CliRun.In(folder.Path, "", "gallery", ".");
        Assert.Equal(2, run.Exit);
        Assert.Contains("holds other files", run.Error);
        Assert.Equal(["notes.txt"], folder.Files);
    }
}
