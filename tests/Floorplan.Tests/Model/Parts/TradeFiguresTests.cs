using Floorplan.Tests.Model.Binding;
using Xunit;

namespace Floorplan.Tests.Model.Parts;

/// <summary>Parts against what the trade says.</summary>
public class TradeFiguresTests
{
    /// <summary>A hand-kill line bleeds 90 s to 2 min before scalding (common practice, no source).</summary>
    [Fact]
    public void Killing_cones_hold_a_bird_until_it_has_bled()
    {
        var plan =
            PlanTexts.Whole(PlanTexts.TwoRooms + "kinds from parts/poultry\nstation cones like killing-cones in wet\n  place at 0, 0\n");
        Assert.InRange(Assert.Single(plan.Stations).Stays!.Value.Base, 90, 120);
    }
}
