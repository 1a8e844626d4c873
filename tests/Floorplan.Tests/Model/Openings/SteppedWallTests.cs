using Floorplan.Model;
using Floorplan.Tests.Model.Binding;
using Xunit;

namespace Floorplan.Tests.Model.Openings;

/// <summary>Openings in an L-shaped shed, where one side of a room may be several walls. Finished faces stand 100 mm in.</summary>
public class SteppedWallTests
{
    private const string Shed = """
        plan "L"
        shell shed corners 0 0, 12000 0, 12000 4500, 5000 4500, 5000 9000, 0 9000
          eaves 2800
        room all "All" dry from west to east

        """;

    [Theory]
    [InlineData("north wall, 300 from west", 300, 8850)]
    [InlineData("north wall, 300 from east", 10600, 4350)]
    [InlineData("north wall, centred", 7850, 4350)]
    [InlineData("east wall, 300 from south", 11850, 300)]
    [InlineData("east wall, 300 from north", 4850, 7600)]
    public void An_opening_is_cut_in_the_stretch_nearest_to_where_it_is_measured_from(string place, double x, double y)
    {
        var door = Bind(place).Openings.Single();
        Assert.Equal((x, y), (door.Start.X.Millimetres, door.Start.Y.Millimetres));
        Assert.Equal(900 * 100, door.Reveal.Area, 6);
        Assert.True(door.InShell);
    }

    [Fact]
    public void Frame_members_say_which_of_two_walls_they_are_in()
    {
        var shell = Bind("north wall, centred").Shell;
        var plates = shell.Frame.Where(m => m.Name == "north top plate").Select(m => m.At!.Value.Millimetres).Order();
        Assert.Equal([4400.0, 8900.0], plates);
    }

    private static Plan Bind(string place) => PlanTexts.Whole(Shed + $"door d1 all to outside, {place}, 900 x 2000\n");
}
