using Floorplan.Checks.Framework;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Framework;

public sealed class RuleResultTests
{
    [Theory]
    [InlineData("goat-dairy-shed.unit", false)]
    [InlineData("game-trailer.unit", true)]
    public void A_report_lists_the_rules_of_trailers_for_trailers_alone(string template, bool listed)
    {
        var plan = CheckedPlan.Plan(File.ReadAllText(Repository.At("templates", template)));
        var names = RuleResult.Of(plan, CheckedPlan.Check(plan)).Select(r => r.Rule.Name).ToList();

        Assert.All(new[] { "hitch-load", "axle-overloaded", "too-wide-for-road" }, name => Assert.Equal(listed, names.Contains(name)));
        Assert.Contains("overlap", names);
        Assert.DoesNotContain("unused", names);
    }
}
