using Xunit;

namespace Floorplan.Tests.Cli;

public class NewCommandTests
{
    [Fact]
    public void Without_a_name_it_lists_the_templates_with_what_they_are()
    {
        var run = CliRun.Of("new");
        Assert.Equal(0, run.Exit);
        Assert.All(Plans.Templates, t => Assert.Matches($@"(?m)^  {Path.GetFileNameWithoutExtension(t)} +\S.+$", run.Out));
    }

    [Fact]
    public void Every_template_is_written_as_it_is_and_has_no_errors()
    {
        using var folder = new TemporaryFolder();
        foreach (string template in Plans.Templates)
        {
            string name = Path.GetFileNameWithoutExtension(template);
            Assert.Equal(0, CliRun.In(folder.Path, "", "new", name, name + ".unit").Exit);
            Assert.Equal(File.ReadAllText(template), File.ReadAllText(folder.At(name + ".unit")));
            var check = CliRun.In(folder.Path, "", "check", name + ".unit");
            Assert.True(check.Exit == 0, check.Out);
        }
    }

    [Fact]
    public void A_file_that_is_there_is_left_alone()
    {
        using var folder = new TemporaryFolder();
        folder.Write("mine.unit", "# mine\n");
        var run = CliRun.In(folder.Path, "", "new", "empty-start", "mine.unit");
        Assert.Equal(2, run.Exit);
        Assert.Contains("mine.unit: it is there already", run.Error);
        Assert.Equal("# mine\n", File.ReadAllText(folder.At("mine.unit")));
    }

    [Fact]
    public void An_unknown_name_offers_near_ones()
    {
        var run = CliRun.Of("new", "fish-20", "x.unit");
        Assert.Equal(2, run.Exit);
        Assert.Contains("did you mean `fish-20ft`?", run.Error);
    }
}
