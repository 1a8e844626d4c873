using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.RoomAndPlace;

public sealed class OutsideShellTests
{
    /// <summary>3000 mm of shed less two walls of 100 mm leave 2800 mm; 2600 + 700 is 500 mm too far.</summary>
    [Fact]
    public void A_thing_beyond_the_lining_is_told_by_how_much()
    {
        var finding = Assert.Single(Found("place 2600 from south, 2000 from west", 900));

        Assert.Equal("Skinning bench (bench) stands 500 mm beyond the finished face of the shell", finding.Message);
        Assert.Equal("move it in by 500 mm", finding.Mend);
        Assert.Equal(500, finding.Measured);
    }

    [Fact]
    public void A_thing_taller_than_its_room_is_told_by_how_much()
    {
        var finding = Assert.Single(Found("place against north wall, 2000 from west", 2700));

        Assert.Equal(
            "Skinning bench (bench) reaches 2700 mm high, 200 mm above the finished ceiling of Preparation (prep) at 2500 mm",
            finding.Message);
        Assert.Equal(["bench", "prep"], finding.Things);
    }

    [Fact]
    public void A_thing_both_too_far_out_and_too_tall_has_two_findings()
        => Assert.Equal(2, Found("place 2600 from south, 2000 from west", 2700).Count);

    [Fact]
    public void Touching_the_wall_is_fine() => Assert.Empty(Found("place against north wall, 2000 from west", 2500));

    private static IReadOnlyList<Floorplan.Checks.Findings.Finding> Found(string place, int height) => CheckedPlan.Check($"""
        plan "Eel shed"
          units metric
        shell shed 6000 x 3000 x 2500
        room prep "Preparation" clean from west to east
        door d1 prep to outside, south wall, 500 from west, 1000 x 2050, swings out
        station bench "Skinning bench" in prep
          size 1800 x 700 x {height}
          {place}
        """, "outside-shell");

    [Theory]
    [InlineData("roof in a, centred, 1000 from west, size 9000", "beyond the roof")]
    [InlineData("floor in a, centred, 100 from west, size 400", "beyond the floor")]
    [InlineData("in a, south wall, 100 from west, height 1200, size 600", "beyond the south wall")]
    [InlineData("in a, south wall, 1500 from west, height 2500, size 600", "beyond the south wall")]
    public void A_hole_that_reaches_beyond_what_it_is_cut_in_is_found(string hole, string says)
    {
        var finding = Assert.Single(CheckedPlan.Check(
            $"plan \"H\"\nshell shed 6000 x 3000 x 2600\n  walls 100\nroom a \"A\" dry from west to east\nhole h1 {hole}\n",
            "outside-shell"));
        Assert.Contains(says, finding.Message);
        Assert.InRange(finding.Measured!.Value, 1, 9000);
    }
}
