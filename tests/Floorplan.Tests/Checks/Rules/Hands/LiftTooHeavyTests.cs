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
    public void In_a_cold_room_it_is_a_note_that_says_why()
    {
        var warm = Assert.Single(CheckedPlan.Check(Heavy, "lift-too-heavy"));
        var cold = Assert.Single(Check("\"Salting\" clean", "\"Salting\" cold"));

        Assert.Equal((Severity.Warning, Severity.Note), (warm.Severity, cold.Severity));
        Assert.Contains("does not cover cold ones", cold.Message, StringComparison.Ordinal);
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

    private static IReadOnlyList<Finding> Check(string from, string to)
    {
        Assert.Contains(from, Heavy, StringComparison.Ordinal);
        return CheckedPlan.Check(Heavy.Replace(from, to, StringComparison.Ordinal), "lift-too-heavy");
    }
}
