using Floorplan.Language.Diagnostics;
using Xunit;

namespace Floorplan.Tests.Language.Diagnostics;

/// <summary>One mechanism tells a fault once, for mistakes of the text and for findings alike.</summary>
public sealed class ToldOnceTests
{
    private static readonly FollowsFrom<Told> WetFromLeak = new("wet", t => t.What == "leak", t => [t.At], t => [t.At]);

    [Fact]
    public void What_follows_goes_where_its_cause_is_told() => Assert.Equal(
        ["leak at kill", "wet at pack"], Keep([WetFromLeak], new("wet", "kill"), new("leak", "kill"), new("wet", "pack")));

    [Fact]
    public void A_cause_that_only_follows_itself_still_explains() => Assert.Equal(
        ["leak at kill"],
        Keep(
            [WetFromLeak, new("mould", t => t.What == "wet", t => [t.At], t => [t.At])], new("mould", "kill"), new("wet", "kill"),
            new("leak", "kill")));

    [Fact]
    public void A_condition_may_hold_it_back() => Assert.Equal(
        ["wet at kill", "leak at kill"], Keep([WetFromLeak with { When = (_, _) => false }], new("wet", "kill"), new("leak", "kill")));

    [Fact]
    public void Nothing_follows_from_itself()
        => Assert.Equal(["wet at kill"], Keep([new("wet", t => t.What == "wet", t => [t.At], t => [t.At])], new Told("wet", "kill")));

    [Fact]
    public void What_is_told_again_is_told_together()
        => Assert.Equal(["leak at kill x 2"], Keep([], new("leak", "kill"), new("leak", "kill")));

    private static IEnumerable<string> Keep(IReadOnlyList<FollowsFrom<Told>> relations, params Told[] all) =>
        ToldOnce.Keep(all, t => t.What, relations, t => $"{t.What} at {t.At}", same => same[0] with { At = $"{same[0].At} x {same.Count}" })
            .Select(t => $"{t.What} at {t.At}");

    private sealed record Told(string What, string At);
}
