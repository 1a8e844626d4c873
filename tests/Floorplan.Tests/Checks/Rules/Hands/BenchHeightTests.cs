using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.Hands;

/// <summary>Which range holds for which work.</summary>
public sealed class BenchHeightTests
{
    private static readonly string Sound = RuleCatalogue.Find("bench-height")!.Good;

    [Theory]
    [InlineData("work   30 s each")]
    [InlineData("work   30 s each, cutting")]
    [InlineData("work   light")]
    public void A_bench_of_900_mm_is_right_for_some_work_and_for_this(string work) => Assert.Empty(Check(900, work));

    [Theory]
    [InlineData("work   30 s each, heavy", 900, "too high for heavy work", "lower it by 11 mm")]
    [InlineData("work   heavy", 900, "too high for heavy work", "lower it by 11 mm")]
    [InlineData("work   precise", 900, "too low for precise work", "raise it by 40 mm")]
    [InlineData("work   cutting", 950, "too high for cutting meat", "lower it by 16 mm")]
    public void A_kind_of_work_has_a_range_of_its_own_as_advice(string work, int high, string told, string mend)
    {
        var finding = Assert.Single(Check(high, work));

        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Contains(told, finding.Message, StringComparison.Ordinal);
        Assert.Contains(mend, finding.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_wrong_for_any_work_is_a_warning_for_each_kind()
        => Assert.Equal(Severity.Warning, Assert.Single(Check(650, "work   heavy")).Severity);

    [Fact]
    public void A_station_takes_the_kind_of_work_from_its_kind()
    {
        string text =
            Sound.Replace(
                "station bench \"Trim bench\" in cut",
                "kind heavy-bench\n  work heavy\nstation bench \"Trim bench\" like heavy-bench in cut", StringComparison.Ordinal);

        Assert.Contains("heavy work", Assert.Single(CheckedPlan.Check(text, "bench-height")).Message, StringComparison.Ordinal);
    }

    private static IReadOnlyList<Finding> Check(int high, string work)
    {
        Assert.Contains("work   30 s each", Sound, StringComparison.Ordinal);
        return CheckedPlan.Check(Sound.Replace("x 900", $"x {high}", StringComparison.Ordinal)
            .Replace("work   30 s each", work, StringComparison.Ordinal), "bench-height");
    }
}
