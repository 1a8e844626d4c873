using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.WaterAndDrain;

/// <summary>Food Code 2022, 5-204.11 (from memory): hand sinks where food is handled, or right next to it.</summary>
public sealed class HandSinkMissingTests
{
    [Theory]
    [InlineData("", 1)]
    [InlineData("sink s1 hand in lobby, 400 x 350, corner north-west", 0)]
    [InlineData("sink s1 hand in work, 400 x 350, corner north-east", 0)]
    [InlineData("sink s1 wash in work, 400 x 350, corner north-east", 1)]
    public void It_may_hang_in_the_room_or_in_its_lobby(string sink, int findings)
        => Assert.Equal(findings, Found("clean", "worker south", sink));

    [Theory]
    [InlineData("dirty", "worker south", 1)]
    [InlineData("dry", "worker south", 0)]
    [InlineData("clean", "", 0)]
    public void Only_rooms_where_people_handle_open_product_need_one(string hygiene, string worker, int findings)
        => Assert.Equal(findings, Found(hygiene, worker, ""));

    private static int Found(string hygiene, string worker, string sink) => CheckedPlan.Check($"""
        plan "Lobby"
          units metric
        shell shed 8000 x 3000 x 2800
        room lobby "Lobby" staff from west to 2000
        room work "Work" {hygiene} from 2000 to east
        door d1 lobby to outside, west wall, centred, 900 x 2050, swings out
        door d2 lobby to work, centred, 900 x 2050, swings work, closes itself
        station bench "Bench" in work
          size  1400 x 600 x 900
          place against north wall, centred
          {worker}
        {sink}
        """, "hand-sink-missing").Count;
}
