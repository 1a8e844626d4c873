using Xunit;

namespace Floorplan.Tests.Cli;

public class FormatCommandTests
{
    private const string Untidy = "plan   \"A\"   # kept\n     units   metric\n";

    [Fact]
    public void It_rewrites_the_file_once_and_keeps_comments()
    {
        using var folder = new TemporaryFolder();
        folder.Write("a.unit", Untidy);
        Assert.Equal(1, CliRun.In(folder.Path, "", "format", "--check", "a.unit").Exit);
        Assert.Equal(0, CliRun.In(folder.Path, "", "format", "a.unit").Exit);
        string formatted = File.ReadAllText(folder.At("a.unit"));
        Assert.NotEqual(Untidy, formatted);
        Assert.Contains("# kept", formatted);
        Assert.Equal(0, CliRun.In(folder.Path, "", "format", "--check", "a.unit").Exit);
        Assert.Contains("in shape already", CliRun.In(folder.Path, "", "format", "a.unit").Out);
    }

    [Fact]
    public void Standard_output_leaves_the_file_alone()
    {
        using var folder = new TemporaryFolder();
        folder.Write("a.unit", Untidy);
        var run = CliRun.In(folder.Path, "", "format", "--stdout", "a.unit");
        Assert.Equal(Untidy, File.ReadAllText(folder.At("a.unit")));
        Assert.Equal(run.Out, CliRun.WithInput(Untidy, "format", "-").Out);
        Assert.Contains("# kept", run.Out);
    }

    [Fact]
    public void A_text_with_mistakes_is_left_as_it_is()
    {
        using var folder = new TemporaryFolder();
        folder.Write("a.unit", Plans.Broken);
        var run = CliRun.In(folder.Path, "", "format", "a.unit");
        Assert.Equal(1, run.Exit);
        Assert.Contains("left as it is", run.Error);
        Assert.Equal(Plans.Broken, File.ReadAllText(folder.At("a.unit")));
    }

    [Fact]
    public void A_byte_order_mark_is_kept()
    {
        using var folder = new TemporaryFolder();
        folder.Write("a.unit", "\uFEFF" + Untidy);
        Assert.Equal(0, CliRun.In(folder.Path, "", "format", "a.unit").Exit);
        Assert.Equal([0xEF, 0xBB, 0xBF], File.ReadAllBytes(folder.At("a.unit"))[..3]);
    }

    [Fact]
    public void Templates_are_in_shape()
    {
        var run = CliRun.Of(["format", "--check", .. Plans.Templates]);
        Assert.True(run.Exit == 0, run.Error);
    }
}
