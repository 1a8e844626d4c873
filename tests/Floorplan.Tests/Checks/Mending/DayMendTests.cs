using Floorplan.Checks.Mending;
using Floorplan.Model.Binding.Files;
using Floorplan.Tests.Checks.Support;
using Floorplan.Tests.Sizing.Simulation;
using Xunit;

namespace Floorplan.Tests.Checks.Mending;

/// <summary>Findings of the day that other figures mend: people, and times of a process. Nobody gets a larger rack by a figure.</summary>
public sealed class DayMendTests
{
    private static string? Mended(string text, string rule)
    {
        var plan = CheckedPlan.Plan(text);
        return new Mender(new NoFiles()).Propose(plan, CheckedPlan.Check(plan)).Findings.First(f => f.Rule == rule).Proposal?.Text;
    }

    [Fact]
    public void One_more_person_mends_a_line_that_falls_behind()
    {
        string text = new DayLine { Crew = 2, PerHour = 380 }.Text;
        Assert.Contains("  crew kill 3\n", Mended(text, "falls-behind"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_longer_stay_mends_one_that_is_too_short()
    {
        string text = new DayLine { Cones = "work 4 s each\n  stays  60s\n  holds 18 birds" }.Text;
        string mended = Mended(text, "not-long-enough")!;
        Assert.Contains("  stays 90 s\n", mended, StringComparison.Ordinal);
        Assert.DoesNotContain("60s", mended, StringComparison.Ordinal);
    }

    [Fact]
    public void A_store_is_not_mended_by_a_figure() => Assert.Null(Mended(new DayLine { Hours = 3 }.Text, "store-too-small"));
}
