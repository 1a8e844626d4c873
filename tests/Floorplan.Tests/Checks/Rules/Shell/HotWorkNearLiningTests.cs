using Floorplan.Checks.Findings;
using Floorplan.Language.Diagnostics;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.Shell;

public sealed class HotWorkNearLiningTests
{
    [Theory]
    [InlineData("", "")]
    [InlineData("", "panel")]
    [InlineData(" \"galvanised sheet\"", "")]
    [InlineData(" \"plywood\"", "stainless sheet")]
    public void Silent_where_nothing_is_said_or_what_is_said_does_not_burn(string lining, string walls)
        => Assert.Empty(Found(lining, walls, ""));

    [Theory]
    [InlineData(" \"18 mm Plywood\"", "")]
    [InlineData(" \"plywood\"", "panel")]
    [InlineData("", "white HDPE sheet")]
    public void All_openings_of_one_lining_are_one_note(string lining, string walls)
    {
        var note = Assert.Single(Found(lining, walls, ""));

        Assert.Equal(["d1", "n1"], note.Things);
        Assert.Equal(Severity.Note, note.Severity);
    }

    [Fact]
    public void A_frame_that_is_not_welded_is_left_out()
        => Assert.Equal(["d1"], Assert.Single(Found(" \"plywood\"", "", ", frame none")).Things);

    [Fact]
    public void A_timber_shed_has_no_welded_frame()
        => Assert.DoesNotContain(CheckedPlan.Check("""
            plan "Shed"
              units metric
            shell shed 6000 x 3000 x 2500
              lining walls 20 "plywood"
            room work "Work room" dry from west to east
            door d1 work to outside, south wall, 2000 from west, 900 x 2050, swings out
            """), f => f.Rule == "hot-work-near-lining");

    private static IReadOnlyList<Finding> Found(string lining, string walls, string frame) => CheckedPlan.Check($"""
        plan "Box"
          units metric
        shell container 20 ft high-cube
          lining walls 50{lining}, ceiling 50
        room work "Work room" dry from west to east
          {(walls.Length > 0 ? $"finish walls \"{walls}\"" : "")}
        door d1 work to outside, south wall, 1000 from west, 900 x 2050, swings out
        window n1 work to outside, south wall, 3000 from west, 800 x 600, sill 1200{frame}
        vent v1 work to outside, north wall, 3000 from west, 300 x 300, sill 2000
        """, "hot-work-near-lining");
}
