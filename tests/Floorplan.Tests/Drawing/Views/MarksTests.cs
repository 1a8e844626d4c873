using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Drawing.Views;

/// <summary>Marks of openings on the plan and on the walls that the welder cuts.</summary>
public class MarksTests
{
    private const string Plan = """
        plan "Two doors with long names"
        shell shed 6000 x 4000 x 2600
        room a "Room" clean from west to east
        door door-to-the-yard-left a to outside, south wall, 500 from west, 900 x 2000, swings out
        door door-to-the-yard-right a to outside, south wall, 3500 from west, 900 x 2000, swings out

        """;

    /// <summary>They begin alike: cut short, one could be taken for the other.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(6)]
    public void Long_names_are_marked_whole(int sheet)
    {
        var items = DrawnPlans.Draw(Plan, [sheet]).Texts();
        foreach (string id in new[] { "door-to-the-yard-left", "door-to-the-yard-right" })
        {
            Assert.Equal(
                id, string.Concat(
                    items.Where(t => t.Group is { } g && g.EndsWith(":" + id, StringComparison.Ordinal) && !t.Text.Any(char.IsDigit))
                        .Select(t => t.Text)));
        }
    }
}
