using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.RoomAndPlace;

/// <summary>
/// Who is counted. A room of 4 x 2.5 x 2.6 m is 26 m3: enough for two, at 11 m3 each (UK code of practice L24, regulation 10).
/// </summary>
public sealed class RoomTooSmallTests
{
    [Theory]
    [InlineData("workers 2 south, 900 apart", "", 0)]
    [InlineData("workers 3 south, 900 apart", "", 1)]
    [InlineData("workers 3 south, 900 apart", "crew work 2", 0)]
    [InlineData("workers 3 south, 900 apart", "crew bench 2", 0)]
    [InlineData("workers 2 south, 900 apart", "crew work 3", 1)]
    [InlineData("workers 2 south, 900 apart", "crew bench 3", 1)]
    public void The_day_says_who_works_there_or_else_the_places(string workers, string crew, int found)
        => Assert.Equal(found, CheckedPlan.Check(Room(2600, workers, crew), "room-too-small").Count);

    /// <summary>Three have 11 m3 each under 3.3 m, but only 3 m count: 30 m3.</summary>
    [Fact]
    public void Height_over_three_metres_does_not_count()
        => Assert.Equal(
            10, Assert.Single(CheckedPlan.Check(Room(3400, "workers 3 south, 900 apart", ""), "room-too-small")).Measured!.Value, 6);

    private static string Room(int eaves, string workers, string crew) => FormattableString.Invariant($"""
        plan "Room"
          units metric
          country uk
        shell shed 4200 x 2700 x {eaves}
        room work "Work" clean from west to east
        door d1 work to outside, south wall, 300 from west, 1000 x 2050, swings out
        station bench "Bench" in work
          size   2800 x 600 x 900
          place  against north wall, 500 from west
          {workers}
        {(crew.Length > 0 ? "day\n  " + crew : "")}
        """);
}
