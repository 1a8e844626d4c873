using Xunit;

namespace Floorplan.Tests.Cli;

/// <summary>Nobody gets a clean cutting file of a hole that goes into a post, rail or casting.</summary>
public class FrameHitTests
{
    private const string Box = """
        plan "Door and post"
          units metric
        shell container 20 ft high-cube
          lining walls 50, ceiling 50, floor 50
          doors east
        room work "Work room" dry from west to east
        door d2 work to outside, north wall, 2000 from west, 900 x 2050, swings out, closes itself, opens from inside

        """;

    private const string DoorInPost
        = "door d1 work to outside, south wall, 50 from west, 900 x 2050, swings out, closes itself, opens from inside\n";

    private const string PipeInPost = "hole p1 in work, south wall, 20 from west, height 1200, 60\n";

    [Theory]
    [InlineData(DoorInPost, "door d1")]
    [InlineData(PipeInPost, "hole p1")]
    public void The_cutting_file_of_that_wall_is_not_written_and_draw_says_why(string cut, string thing)
    {
        using var folder = new TemporaryFolder();
        folder.Write("unit.unit", Box + cut);
        var run = CliRun.In(folder.Path, "", "draw", "unit.unit", "--format", "svg,dxf");
        Assert.Equal(1, run.Exit);
        Assert.Contains("out/unit-cut-outs-north-wall-mm.dxf", folder.Files);
        Assert.DoesNotContain("out/unit-cut-outs-south-wall-mm.dxf", folder.Files);
        Assert.Contains($"floorplan: unit: no cutting file of the south wall while this stands: {thing} cuts ", run.Error);
        string sheet = File.ReadAllText(folder.At("out/unit-6-openings-and-frames.svg"));
        Assert.Contains(">DO NOT CUT<", sheet);
        Assert.Contains("crossed out: do not cut", sheet);
    }

    [Fact]
    public void What_an_engineer_accepted_is_cut()
    {
        using var folder = new TemporaryFolder();
        folder.Write("unit.unit", Box + DoorInPost + "accept cuts-frame at d1 \"post replaced, calculation 12\" by \"the engineer\"\n");
        var run = CliRun.In(folder.Path, "", "draw", "unit.unit", "--format", "svg,dxf");
        Assert.DoesNotContain("no cutting file", run.Error);
        Assert.Contains("out/unit-cut-outs-south-wall-mm.dxf", folder.Files);
        Assert.DoesNotContain("DO NOT CUT", File.ReadAllText(folder.At("out/unit-6-openings-and-frames.svg")));
    }

    [Fact]
    public void A_clean_plan_has_no_cross_and_all_its_files()
    {
        using var folder = new TemporaryFolder();
        folder.Write("unit.unit", Box);
        CliRun.In(folder.Path, "", "draw", "unit.unit", "--format", "svg,dxf");
        Assert.Contains("out/unit-cut-outs-north-wall-mm.dxf", folder.Files);
        Assert.DoesNotContain("crossed out", File.ReadAllText(folder.At("out/unit-6-openings-and-frames.svg")));
    }
}
