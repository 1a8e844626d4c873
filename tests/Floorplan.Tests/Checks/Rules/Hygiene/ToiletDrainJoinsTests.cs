using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.Hygiene;

public sealed class ToiletDrainJoinsTests
{
    [Fact]
    public void Into_a_clean_room_it_is_told_of_once_as_sewage()
        => Assert.Equal(["toilet-drain-joins"], Found("clean"));

    [Fact]
    public void Into_a_dirty_room_it_is_sewage_all_the_same()
        => Assert.Equal(["toilet-drain-joins"], Found("dirty"));

    [Fact]
    public void Two_toilets_may_share_a_line()
        => Assert.Empty(Found("toilet"));

    private static string[] Found(string kind) => [.. CheckedPlan.Check($"""
        plan "Rudd unit"
          units metric
        shell shed 8000 x 3000 x 2500
        room gut "Next room" {kind} from west to 6000
        room wc "Toilet" toilet from 6000 to east
        drain fd1 floor in gut, centred, 100
        drain fd2 floor in wc, centred, 100, runs to fd1
        """).Select(f => f.Rule).Where(r => r is "toilet-drain-joins" or "drain-runs-to-clean")];
}
