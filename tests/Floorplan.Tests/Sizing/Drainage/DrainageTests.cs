using Floorplan.Tests.Checks.Support;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Sizing.Drainage;

/// <summary>How deep a floor with falls comes down: one answer for the check and for sheet 4.</summary>
public class DrainageTests
{
    /// <summary>
    /// Walls are 100 mm thick. The falls name one drain of three, at one end of a floor of 10 m by 3 m. By Pythagoras its farthest
    /// corner lies
    /// sqrt(9500 x 9500 + 1500 x 1500) = 9618 mm off, and 2 % of that is 192 mm. The check measured to the nearest drain, found the run
    /// short and said nothing, while sheet 4 printed the level of the named drain.
    /// </summary>
    [Fact]
    public void Falls_to_one_drain_of_three_are_checked_as_they_are_drawn()
    {
        string text = Floor("falls a 2 % to fd1");
        var finding = Assert.Single(CheckedPlan.Check(text, "fall-not-possible"));
        Assert.Equal(192, finding.Measured!.Value, 0);
        Assert.Equal(50, finding.LimitValue);

        var request = DrawnPlans.Request(text);
        var drain = request.Facts.Drainage["a"].Levels.Single(l => l.Drain?.Id == "fd1");
        Assert.Equal("-192", drain.Level.Text);
        Assert.Contains(
            Floorplan.Drawing.Sheets.SheetSet.Draw(request, [4]).SelectMany(p => p.Figures), f => ReferenceEquals(f, drain.Level));
        Assert.Contains(request.Findings.Single(f => f.Rule == "fall-not-possible").Figures, f => ReferenceEquals(f, drain.Level));
    }

    /// <summary>
    /// Without a named drain the floor runs to the nearest of three. They lie 500, 5000 and 9500 mm from the west: the farthest floor is
    /// in the middle between two, at the wall: sqrt(2250 x 2250 + 1500 x 1500) = 2704 mm, which 2 % raises 54 mm.
    /// </summary>
    [Fact]
    public void Falls_without_a_drain_run_to_the_nearest()
    {
        string text = Floor("falls a 2 %");
        var facts = CheckedPlan.Facts(CheckedPlan.Plan(text));
        Assert.Equal(54, facts.Drainage["a"].Rise!.Value, 0);
        Assert.All(facts.Drainage["a"].Levels.Where(l => l.Drain is not null), l => Assert.Equal(-54, l.Level.Value, 0));
        Assert.Contains(facts.Drainage["a"].Levels, l => l.Drain is null && l.Level.Text == "±0");
    }

    private static string Floor(string falls) => $"""
        plan "Three drains"
          units metric
        shell shed 10200 x 3200 x 2600
          lining walls 0, ceiling 0, floor 50
        room a "Wash" dirty from west to east
        drain fd1 floor in a, 500 from west, 1500 from south, 100
        drain fd2 floor in a, 5000 from west, 1500 from south, 100
        drain fd3 floor in a, 9500 from west, 1500 from south, 100
        {falls}
        """;
}
