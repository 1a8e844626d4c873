using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.Hands;

/// <summary>What is lifted, and where the equation says nothing. At its best it allows 51 lb, 23.1 kg (DHHS (NIOSH) 94-110).</summary>
public sealed class LiftTooHeavyTests
{
    private static readonly string Heavy = RuleCatalogue.Find("lift-too-heavy")!.Bad;

    /// <summary>19 to 26 degrees Celsius: 94-110, pages 5 and 6.</summary>
    [Fact]
    public void In_a_cold_room_it_weighs_no_less_and_says_why()
    {
        var warm = Assert.Single(CheckedPlan.Check(Heavy, "lift-too-heavy"));
        var cold = Assert.Single(Check("\"Salting\" clean", "\"Salting\" cold"));

        Assert.Equal((Severity.Warning, Severity.Warning), (warm.Severity, cold.Severity));
        Assert.Contains("leaves out cold rooms", cold.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("cold", warm.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("product hams, 30 kg each\n  product legs, 9 kg each", 0)]
    [InlineData("product hams, 30 kg each\n  product sides, 40 kg each", 1)]
    [InlineData("product hams, 30 kg each\n  product sides", 0)] // nobody says how heavy
    public void Of_several_products_even_the_lightest_has_to_be_too_heavy(string products, int found)
    {
        var findings = Check("product hams, 30 kg each", products);

        Assert.Equal(found, findings.Count);
        Assert.All(findings, f => Assert.Contains("30 kg are lifted", f.Message, StringComparison.Ordinal));
    }

    /// <summary>Unstable loads and restricted space: 94-110, pages 5 and 6.</summary>
    [Theory]
    [InlineData("by hand 30 kg live", "leaves out live animals")]
    [InlineData("by hand 30 kg liquid", "leaves out liquids")]
    public void What_the_equation_does_not_cover_weighs_no_less_and_says_why(string carriage, string why)
    {
        var finding = Check("by hand", carriage)[0];

        Assert.Equal(Severity.Warning, finding.Severity);
        Assert.Contains(why, finding.Message, StringComparison.Ordinal);
    }

    /// <summary>A 95th-percentile man is 1870 mm tall (ANSUR II), 1900 with shoes.</summary>
    [Theory]
    [InlineData(1899, true)]
    [InlineData(1900, false)]
    public void Under_a_ceiling_that_bends_the_back_the_equation_does_not_hold(int ceiling, bool said)
        => Assert.All(
            Check("6000 x 3000 x 2600", $"6000 x 3000 x {ceiling}", "1000 x 2050", "1000 x 1800"), f => Assert.Equal(
                (Severity.Warning, said), (f.Severity, f.Message.Contains("too low to stand upright", StringComparison.Ordinal))));

    /// <summary>94-110, revised 2021: above an index of 3 most people are at risk. A full vat of 240 kg was a note.</summary>
    [Theory]
    [InlineData("by hand 69 kg", Severity.Warning)]
    [InlineData("by hand 75 kg", Severity.Error)]
    [InlineData("by hand 240 kg liquid", Severity.Error)]
    public void Three_times_what_the_equation_allows_is_an_error(string carriage, Severity severity)
        => Assert.Equal(severity, Check("by hand", carriage, "1500 x 600 x 850", "1500 x 600 x 762")[0].Severity);

    /// <summary>ISO 11228-1:2021 (from memory): a reference mass of 20 kg where women work, less than the equation's 23 kg.</summary>
    [Theory]
    [InlineData("", 1)]
    [InlineData("\n  people men", 0)]
    public void Twenty_one_kilograms_are_too_much_where_women_work(string people, int found)
        => Assert.Equal(
            found, Check("30 kg each", "21 kg each" + people, "1500 x 600 x 850", "1500 x 600 x 762").Count);

    /// <summary>51 lb is 23.1 kg, at 30 in, 762 mm: the load constant.</summary>
    [Theory]
    [InlineData("bin bin 20 L in salt, 400 x 400 x 762", 0)]
    [InlineData("bin bin 24 L in salt, 400 x 400 x 762", 1)]
    [InlineData("bin bin in salt, 400 x 400 x 762, weight 2 kg empty, 24 kg full", 1)]
    [InlineData("bin bin in salt, 400 x 400 x 762", 0)] // nobody says how much it holds
    public void A_full_bin_carried_out_is_lifted(string bin, int found)
    {
        var findings =
            Check("flow product\n  outside -> d1 -> bench -> rack by hand", bin
                + ", corner north-east\nflow waste\n  bin -> d1 -> outside by hand, after work");

        Assert.Equal(found, findings.Count);
        Assert.All(findings, f => Assert.Contains("loads that shift", f.Message, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("by hand 20 kg, before work", 0)]
    [InlineData("by hand 26 kg, before work", 1)]
    [InlineData("by trolley 600 wide, before work", 0)]
    public void Supplies_are_lifted_when_the_plan_says_their_weight(string carriage, int found) => Assert.Equal(
        found, Check("flow product\n  outside -> d1 -> bench -> rack by hand", "flow supplies \"Salt\"\n  outside -> d1 -> bench "
            + carriage).Count);

    /// <summary>To a rack hands go at the height of the bench beside it, though it is higher than the equation reaches (70 in).</summary>
    [Fact]
    public void A_high_rack_is_loaded_at_the_height_that_suits()
        => Assert.Empty(
            Check(
                "product hams, 30 kg each", "product hams, 9 kg each", "station rack \"Turning table\" in salt\n  size   1500 x 600 x 850",
                "store rack \"Rack\" in salt\n  size   1500 x 600 x 1900", "500 from east\n  worker south", "500 from east"));

    private static IReadOnlyList<Finding> Check(params string[] changes)
    {
        string text = Heavy;
        for (int i = 0; i < changes.Length; i += 2)
        {
            Assert.Contains(changes[i], text, StringComparison.Ordinal);
            text = text.Replace(changes[i], changes[i + 1], StringComparison.Ordinal);
        }

        return CheckedPlan.Check(text, "lift-too-heavy");
    }
}
