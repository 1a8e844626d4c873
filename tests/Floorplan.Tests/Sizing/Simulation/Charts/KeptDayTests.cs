using Floorplan.Model.Space;
using Floorplan.Sizing;
using Floorplan.Tests.Checks.Support;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Sizing.Simulation.Charts;

/// <summary>The runs of a day are taken over from one text to the next while the line is the same, and made again when it is not.</summary>
public sealed class KeptDayTests
{
    private const string Title = "Quillsnap Hollow poultry unit";
    private readonly PlanFacts before = Of(DrawnPlans.Text("poultry-40ft"), null);

    [Fact]
    public void Another_title_needs_no_new_run()
    {
        _ = (before.CrewPaces, before.FewGains);
        var after = Of(DrawnPlans.Text("poultry-40ft").Replace(Title, "Another name", StringComparison.Ordinal), before);
        Assert.Same(before.Day.FlatOut, after.Day.FlatOut);
        Assert.Same(before.CrewPaces, after.CrewPaces);
        Assert.Same(before.FewGains, after.FewGains);
        Assert.Contains(after.Day.Planned.Stations, s => ReferenceEquals(s, after.Plan.Stations[0]));
    }

    [Theory]
    [InlineData("kill 2", "kill 1"), InlineData("60 birds/h", "61 birds/h"), InlineData("holds    100 birds", "holds    90 birds")]
    public void Another_figure_gives_what_a_fresh_run_gives(string was, string now)
    {
        string text = DrawnPlans.Text("poultry-40ft");
        Assert.Contains(was, text, StringComparison.Ordinal);
        text = text.Replace(was, now, StringComparison.Ordinal);
        _ = (before.CrewPaces, before.FewGains);
        var after = Of(text, before);
        var fresh = Of(text, null);
        Assert.NotSame(before.Day.FlatOut, after.Day.FlatOut);
        Assert.Equal(fresh.Day.Rate, after.Day.Rate);
        Assert.Equal(fresh.Day.Paced!.Outs, after.Day.Paced!.Outs);
        Assert.Equal(fresh.CrewPaces.SelectMany(p => p.Rates), after.CrewPaces.SelectMany(p => p.Rates));
        Assert.Equal(fresh.FewGains.Select(g => (g.Text, g.Rate)), after.FewGains.Select(g => (g.Text, g.Rate)));
    }

    /// <summary>Facts in between that nobody asks for the day do not lose it.</summary>
    [Fact]
    public void Runs_are_handed_on()
    {
        _ = before.Day;
        string text = DrawnPlans.Text("poultry-40ft");
        var between = Of(text.Replace(Title, "Another name", StringComparison.Ordinal), before);
        Assert.Same(before.Day.FlatOut, Of(text, between).Day.FlatOut);
    }

    private static PlanFacts Of(string text, PlanFacts? known)
    {
        var plan = CheckedPlan.Plan(text);
        return known is null ? new PlanFacts(plan, new FloorSpace(plan)) : new PlanFacts(plan, known);
    }
}
