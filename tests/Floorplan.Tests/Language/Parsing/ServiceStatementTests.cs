using Floorplan.Language.Syntax;
using Floorplan.Language.Text;
using Xunit;

namespace Floorplan.Tests.Language.Parsing;

/// <summary>Each service statement knows its own words and details, and no others.</summary>
public class ServiceStatementTests
{
    [Theory]
    [InlineData("panel p1 in r, south wall, 1500 from west, 100 A 230 V, gfci", "unknown-detail")]
    [InlineData("panel p1 in r, south wall, 1500 from west, circuit 3", "unknown-detail")]
    [InlineData("panel p1 in r, south wall, 1500 from west, 100 A, singel-phase", "unknown-detail")]
    [InlineData("panel p1 in r, south wall, 1500 from west, 150 L", "wrong-unit")]
    [InlineData("drain fd1 cold in r, centred", "unknown-word")]
    [InlineData("drain fd1 roof in r, centred", "unknown-word")]
    [InlineData("water w1 cold in r, north wall, centred, outlet 150 below floor", "unknown-detail")]
    [InlineData("water w1 cold on w2", "unknown-word")]
    [InlineData("hose hz1 cold on w1, 7.5 m", "not-expected")]
    [InlineData("switch k1 in r, west wall, centred, gfci", "unknown-detail")]
    [InlineData("heater h1 in r, west wall, centred, 9 kW sealed", "left-over")]
    [InlineData("hole h1 in r, west wall, centred, height 300, 50, vacuum breaker", "unknown-detail")]
    [InlineData("outlet x1 in r, west wall, centred, runs to fd1", "unknown-detail")]
    public void What_belongs_to_another_is_refused(string text, string code)
        => Assert.Equal(code, Assert.Single(Parse(text).Diagnostics).Code);

    /// <summary>One of the two would be dropped.</summary>
    [Theory]
    [InlineData(
        "panel p1 in r, south wall, centred, 100 A single-phase three-phase",
        "`single-phase` and `three-phase` are both said in this `panel`")]
    [InlineData("drain fd1 floor trench in r, centred", "`floor` and `trench` are both said in this `drain`")]
    [InlineData("water w1 cold cold in r, north wall, centred", "`cold` is said twice in this `water`")]
    [InlineData("outlet x1 in r, north wall, centred, 16 A, gfci, rcd", "`gfci` and `rcd` are both said in this `outlet`")]
    public void Two_words_for_one_thing_are_told(string text, string message)
        => Assert.Equal(message, Assert.Single(Parse(text).Diagnostics).Message);

    [Theory]
    [InlineData("water w1 hot cold in r, north wall, centred, 20, 12 L/min 60 C, vacuum breaker")]
    [InlineData("drain fd1 trench in r, centred, 100, 2 L/min, outlet 150 below floor, runs to fd2")]
    [InlineData("hose hz1 on w1, 25 ft, backflow preventer")]
    [InlineData("panel p1 in r, south wall, centred, 63 A 400 V three-phase")]
    [InlineData("outlet x1 in r, south wall, centred, 16 A 230 V single-phase, rcd, sealed, circuit 3")]
    [InlineData("switch k1 two-way in r, south wall, centred, sealed, circuit 2")]
    [InlineData("heater h1 tank in r, south wall, centred, 9 kW 150 L 60 C three-phase, circuit 1")]
    [InlineData("hole h1 \"Fan\" roof in r, centred, 400 x 300")]
    [InlineData("light r 540 lux, s 220 lux")]
    [InlineData("air supply r 300 m3/h, supply s, exhaust r")]
    public void Its_own_are_read(string text) => Assert.Empty(Parse(text).Diagnostics);

    private static SyntaxTree Parse(string text) => SyntaxTree.Parse(new SourceText(text + "\n", "a.unit"));
}
