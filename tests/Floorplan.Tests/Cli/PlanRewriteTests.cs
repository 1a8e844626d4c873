using Floorplan.Cli.Hosting;
using Floorplan.Cli.Input;
using Floorplan.Cli.Output.Files;
using Xunit;

namespace Floorplan.Tests.Cli;

/// <summary>A plan's own file is written back only over what was read.</summary>
public class PlanRewriteTests
{
    [Fact]
    public void An_edit_saved_in_between_is_not_overwritten()
    {
        using var folder = new TemporaryFolder();
        string file = folder.Write("unit.unit", Plans.Good);
        var read = Read(folder, file);
        folder.Write("unit.unit", Plans.Good + "# an edit\n");
        Assert.Contains("another program changed it after it was read", PlanRewrite.Replace(read, "new text"));
        Assert.Equal(Plans.Good + "# an edit\n", File.ReadAllText(file));
        Assert.Equal(["unit.unit"], folder.Files);
    }

    [SkippableFact]
    public void An_edit_of_a_file_with_two_names_is_not_overwritten()
    {
        Skip.If(OperatingSystem.IsWindows(), "no ln there");
        using var folder = new TemporaryFolder();
        string file = folder.Write("unit.unit", "longer than the new text");
        folder.Link("unit.unit", "twin.unit");
        var stale = Read(folder, file);
        folder.Write("twin.unit", "an edit");
        Assert.Contains("another program changed it", PlanRewrite.Replace(stale, "x"));
        Assert.Equal("an edit", File.ReadAllText(file));
        Assert.Equal(["twin.unit", "unit.unit"], folder.Files);
    }

    private static PlanText Read(TemporaryFolder folder, string file)
    {
        using var host = new Host { In = Stream.Null, Out = TextWriter.Null, Error = TextWriter.Null, Folder = folder.Path };
        return PlanFileReader.Read(file, host);
    }
}
