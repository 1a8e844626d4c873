using Floorplan.Language.Diagnostics;
using Xunit;

namespace Floorplan.Tests.Language.Diagnostics;

public class NearNamesTests
{
    private static readonly string[] Names = ["gutting", "packing", "tipping", "bench", "chill", "rack", "d1", "d2", "d3", "d4"];

    [Theory]
    [InlineData("guting", "gutting")]
    [InlineData("gutitng", "gutting")]
    [InlineData("Bench", "bench")]
    [InlineData("benches", "bench")]
    [InlineData("chil", "chill")]
    public void A_slip_finds_its_name(string wanted, string name) => Assert.Equal([name], NearNames.Find(wanted, Names));

    [Fact]
    public void Nearest_comes_first()
        => Assert.Equal(["stations", "station"], NearNames.Find("stations1", ["station", "chill", "stations"]));

    [Fact]
    public void No_more_than_three_are_offered() => Assert.Equal("did you mean `d1`, `d2` or `d3`?", NearNames.Hint("d9", Names));

    [Fact]
    public void A_stranger_finds_nothing() => Assert.Null(NearNames.Hint("elephant", Names));

    [Fact]
    public void Huge_names_cost_nothing() => Assert.Empty(NearNames.Find(new string('a', 100_000), [new string('a', 100_001)]));
}
