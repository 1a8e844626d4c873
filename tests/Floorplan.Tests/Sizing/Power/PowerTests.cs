using Floorplan.Drawing.Sheets.PowerLightAir;
using Floorplan.Drawing.Sheets.Schedules;
using Floorplan.Tests.Checks.Support;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Sizing.Power;

/// <summary>Working space, loads, light and air: one answer for the checks, sheet 5, sheet 8 and its CSV.</summary>
public class PowerTests
{
    /// <summary>
    /// A panel 100 mm from the corner: 30 in (762 mm, NEC 110.26(A)(2)) beside the corner reach 762 mm along the wall. The tank stands
    /// 520 mm
    /// from the corner, in that space and outside a space centred on the panel. Sheet 5 drew the tank in the space, the check found
    /// nothing.
    /// </summary>
    [Fact]
    public void A_tank_in_the_drawn_working_space_beside_a_corner_is_found()
    {
        string text = Unit("station tank \"Brine tank\" in pack\n  size 600 x 600 x 900\n  place 500 from east, 520 from south");
        var space = Assert.Single(CheckedPlan.Facts(CheckedPlan.Plan(text)).WorkingSpaces);
        Assert.Equal(762, space.To - space.From, 3);
        Assert.Equal(0, space.From, 0);

        var finding = Assert.Single(CheckedPlan.Check(text, "panel-space"));
        Assert.Equal(["p1", "tank"], finding.Things);
        Assert.Equal(500, finding.Measured!.Value, 0);
    }

    /// <summary>A round tank whose square would stand in the space leaves it free.</summary>
    [Fact]
    public void A_thing_beside_the_working_space_is_not_in_it() => Assert.Empty(
        CheckedPlan.Check(
            Unit("station tank \"Brine tank\" in pack\n  size 600 x 600 x 900\n  place 500 from east, 800 from south"), "panel-space"));

    /// <summary>The heater was missing from the sum of the loads, from the load of its circuit and from the connections.</summary>
    [Fact]
    public void Loads_circuits_and_connections_count_the_heater()
    {
        var facts = CheckedPlan.Facts(CheckedPlan.Plan(Unit("""
            heater wh1 in pack, west wall, 300 from north, 9 kW 150 L, circuit 3
            station saw "Saw" in pack
              size 600 x 600 x 900
              place against north wall, 1000 from west
              needs power 230 V 1.5 kW
              circuit 3
            """)));

        var together = facts.Power.Together!;
        Assert.Equal(10_500, together.Value, 6);
        Assert.Same(together, PowerTables.Loads(facts).Rows[^1][^1].Figures[0]);
        Assert.Same(together, ScheduleTables.Connections(facts).Rows.Single(r => r[0].Text == "Power")[2].Figures[0]);
        Assert.Equal(10_500, PowerTables.Circuits(facts)!.Rows.Single(r => r[0].Text == "3")[2].Figures[0].Value, 6);
        Assert.Equal(["", "230 V 1.5 kW"], new[] { "", PowerTables.Loads(facts).Rows.Single(r => r[1].Text == "Saw")[^1].Text });
    }

    /// <summary>
    /// Walls are 100 mm thick. A fan brings 60 m3/h into a room of 6 x 3 x 2.5 m = 45 m3 and one draws 120 m3/h out of it. The larger
    /// is the
    /// change: 120 / 45 = 2.7 volumes an hour. The check worked it out by itself, and sheet 5 had its own volume and printed no changes.
    /// </summary>
    [Fact]
    public void Sheet_5_prints_the_air_that_the_check_judges()
    {
        var request = DrawnPlans.Request("""
            plan "Steam room"
              units metric
              country my
              trade poultry
            shell shed 6200 x 3200 x 2500
              lining walls 0, ceiling 0, floor 0
            room scald "Scalding" dirty from west to east
            air supply scald 60 m3/h
            air exhaust scald 120 m3/h
            """);

        var finding = request.Findings.Single(f => f.Rule == "too-little-air");
        Assert.Equal(120 / 45.0, finding.Measured!.Value, 6);
        var row = PowerTables.Rooms(request.Facts).Rows.Single(r => r[0].Text == "Scalding");
        Assert.Equal("120 m³/h", row[4].Text);
        Assert.All(row.Skip(2).SelectMany(c => c.Figures), f => Assert.Contains(finding.Figures, other => ReferenceEquals(f, other)));
    }

    /// <summary>The check read 0 lux, sheet 5 printed "not said".</summary>
    [Fact]
    public void A_room_with_0_lux_is_dark_on_the_sheet_too()
    {
        var request =
            DrawnPlans.Request(
                Unit("station b1 \"Bench\" in pack\n  size 600 x 600 x 900\n  place against north wall, centred\n  worker south\nlight "
                    + "pack 0 lux"));
        var figure = Assert.Single(request.Findings.Single(f => f.Rule == "too-dark").Figures);
        Assert.Equal("0 lux", figure.Text);
        Assert.Same(figure, PowerTables.Rooms(request.Facts).Rows[0][1].Figures[0]);
    }

    private static string Unit(string more) => $"""
        plan "Panel and tank"
          units metric
          code us
        shell shed 6000 x 3000 x 2600
          lining walls 0, ceiling 0, floor 0
        room pack "Packing" dry from west to east
        panel p1 in pack, east wall, 100 from south, 100 A 230 V single-phase
        {more}
        """;
}
