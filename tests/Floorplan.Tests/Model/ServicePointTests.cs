using Floorplan.Language.Words.Terms;
using Floorplan.Model;
using Floorplan.Model.Comparing;
using Floorplan.Model.Services;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Model;

/// <summary>What a service statement says is found in its record, by type.</summary>
public class ServicePointTests
{
    private static readonly Plan Plan = Written();

    [Fact]
    public void Words_are_values()
    {
        Assert.Equal(Phases.ThreePhase, One<Panel>().Phases);
        Assert.Equal((FaultGuard.Rcd, true, "3"), (One<Outlet>().Guard!.Value, One<Outlet>().Sealed, One<Outlet>().Circuit));
        Assert.Equal(Switching.TwoWay, One<Switch>().Switching);
        Assert.Equal(HeaterForm.Tank, One<Heater>().Form);
        Assert.Equal(HoleThrough.Roof, One<Hole>().Through);
        Assert.Equal([BackflowGuard.VacuumBreaker], One<Hose>().Guards);
        Assert.Equal((true, true, 20.0), (One<WaterPoint>().Cold, One<WaterPoint>().Hot, One<WaterPoint>().Size!.Value.Millimetres));
        Assert.Equal(
            (DrainForm.Trench, "fd2"), (Plan.Services.OfType<Drain>().First().Form, Plan.Services.OfType<Drain>().First().RunsToId));
        Assert.Equal(
            ("540 lux", "300 m3/h", null), (One<Light>().Amount.ToString(), One<AirSupply>().Amount.ToString(), One<AirExhaust>().Amount));
    }

    /// <summary>Each word by itself, not as a row of words.</summary>
    [Theory]
    [InlineData("outlet 150 below floor", "outlet 120 below floor", "drain fd1: outlet 120 mm, was 150 mm")]
    [InlineData(", runs to fd2", "", "drain fd1: runs to no longer said, was fd2")]
    [InlineData("trench in", "floor in", "drain fd1: form floor, was trench")]
    [InlineData("three-phase", "single-phase", "panel p1: phases single-phase, was three-phase")]
    [InlineData("rcd, sealed", "rcd", "outlet x1: sealed no longer said")]
    [InlineData("540 lux", "220 lux", "light wash: rated 220 lux, was 540 lux")]
    public void A_changed_detail_is_told(string was, string now, string said) =>
        Assert.Contains(said, PlanComparison.Of(Plan, Written(was, now)).Changes.Select(c => c.Text));

    private static T One<T>()
        where T : ServicePoint => Assert.Single(Plan.Services.OfType<T>());

    private static Plan Written(string was = "", string now = "")
    {
        string text = """
            plan "Every point"
              units metric
            shell shed 8000 x 4000 x 2600
            room wash "Wash" dirty from west to east
            water w1 cold hot in wash, north wall, 500 from west, height 1200, 20
            hose hz1 on w1, 7.5 m, vacuum breaker
            drain fd1 trench in wash, 2000 from west, centred, 100, outlet 150 below floor, runs to fd2
            drain fd2 floor in wash, 4000 from west, centred, 100
            panel p1 in wash, east wall, 500 from south, 63 A 400 V three-phase
            outlet x1 in wash, east wall, 1500 from south, height 1100, 16 A 230 V, rcd, sealed, circuit 3
            switch k1 two-way in wash, east wall, 2500 from south, height 1100
            heater h1 tank in wash, west wall, 500 from south, 9 kW 150 L
            hole fan "Fan" roof in wash, 6000 from west, centred, 400 x 300
            light wash 540 lux
            air supply wash 300 m3/h, exhaust wash
            """;
        if (was.Length > 0)
        {
            Assert.Contains(was, text);
            text = text.Replace(was, now, StringComparison.Ordinal);
        }

        return CheckedPlan.Plan(text);
    }
}
