using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Model;
using Floorplan.Sizing.Bodies;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Measuring;

/// <summary>
/// ANSUR II (Gordon and others, NATICK/TR-15/007, 2014), percentiles computed from its public data of 4082 men and 1986 women: these
/// figures were copied from that computation, rounded to whole mm.
/// </summary>
public sealed class BodyTableTests
{
    [Theory]
    [InlineData(BodyMeasure.Stature, 1525, 1870)]
    [InlineData(BodyMeasure.ThumbTipReach, 674, 886)]
    [InlineData(BodyMeasure.FingertipsUp, 1926, 2438)]
    [InlineData(BodyMeasure.ElbowToElbow, 432, 667)]
    [InlineData(BodyMeasure.Shoulders, 406, 567)]
    [InlineData(BodyMeasure.BetweenShoulders, 335, 447)]
    [InlineData(BodyMeasure.Belly, 184, 320)]
    public void Usual_people_are_from_a_5th_percentile_woman_to_a_95th_percentile_man(BodyMeasure measure, double smallest, double largest)
    {
        Assert.Equal(smallest, BodySize.Smallest(measure).Usual);
        Assert.Equal(largest, BodySize.Largest(measure).Usual);
    }

    [Theory]
    [InlineData(WhoWorks.Women, 5, 95, 674, 816)]
    [InlineData(WhoWorks.Men, 5, 95, 742, 886)]
    [InlineData(WhoWorks.WomenAndMen, 10, 90, 691, 868)]
    [InlineData(WhoWorks.Women, 1, 99, 651, 852)]
    [InlineData(WhoWorks.Men, 50, 50, 811, 811)]
    public void Other_people_have_other_arms(WhoWorks who, double least, double most, double smallest, double largest)
    {
        var people = new People(who, least, most);

        Assert.Equal(smallest, BodySize.Smallest(BodyMeasure.ThumbTipReach).Of(people));
        Assert.Equal(largest, BodySize.Largest(BodyMeasure.ThumbTipReach).Of(people));
    }

    /// <summary>Between 691 mm at 10 and 715 mm at 25 of a hundred: two thirds of the way at 20.</summary>
    [Fact]
    public void Between_percentiles_a_measure_lies_on_a_straight_line() =>
        Assert.Equal(707, BodySize.Smallest(BodyMeasure.ThumbTipReach).Of(new People(WhoWorks.Women, 20, 95)));

    [Fact]
    public void A_limit_says_whose_bodies_it_is_for_where_the_plan_says_so()
    {
        var rule = RuleCatalogue.Find("elbow-room")!;
        var women = new PlanLimits(CheckedPlan.Plan("plan \"A\"\n  people women\nshell container 20 ft high-cube"))
            .Find(rule, rule.Limits[0].Key)!;
        var usual = new PlanLimits(CheckedPlan.Plan("plan \"A\"\nshell container 20 ft high-cube")).Find(rule, rule.Limits[0].Key)!;

        Assert.Contains("people of this plan: women 5 to 95 %", women.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("people of this plan", usual.Text, StringComparison.Ordinal);
    }
}
