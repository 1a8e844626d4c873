using System.Text;
using Floorplan.Drawing.Schedules;
using Floorplan.Drawing.Sheets.Schedules;
using Floorplan.Drawing.Sheets.WaterAndDrainage;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Water;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Sizing.Water;

/// <summary>Which point serves what: one answer for the checks, sheet 4, sheet 8 and its CSV.</summary>
public class SupplyTests
{
    /// <summary>
    /// The guarded tap is nearest to the edge of the tank, the other one to its middle. Sheet 4 piped the tank from the unguarded tap while
    /// the check was content with the guarded one.
    /// </summary>
    [Fact]
    public void A_tank_is_piped_from_the_tap_that_the_backflow_check_counts_on()
    {
        var facts = CheckedPlan.Facts(CheckedPlan.Plan("""
            plan "Two taps and a tank"
              units metric
            shell shed 5000 x 1800 x 2600
            room rinse "Rinse" dirty from west to east
            water w1 cold in rinse, south wall, 700 from west, height 1200, backflow preventer
            water w2 cold in rinse, north wall, 2200 from west, height 1200
            hose hz1 on w2, 5 m, vacuum breaker
            station tank "Rinse tank" in rinse
              size 2400 x 600 x 850
              place against south wall, 1000 from west
              holds 200 L
              needs cold 8 L/min
            """));

        var run = Assert.Single(PipeRun.Of(facts.Supply), r => r.Uses.Any(u => u.Id == "tank"));
        Assert.Equal("w1", run.Point.Id);
        Assert.DoesNotContain(CheckedPlan.Check(facts.Plan)
, f => f.Rule.Contains("air", StringComparison.Ordinal) && f.Things.Contains("tank"));
    }

    /// <summary>
    /// Two benches that say cold, two hand sinks that say nothing, a hose on a mixed tap, a heater: cold 2 + 2 + 1 + 1, hot 2 + 1, drains
    /// 1 + 2; the floor drain is no use. Cold water together: 8 + 4 L/min as written, and 3 L/min of hot that the heater draws.
    /// Sheet 8 and its CSV said two cold uses, no hot row, and counted the floor drain.
    /// </summary>
    [Fact]
    public void Connections_count_sinks_hoses_and_heaters_and_no_floor_drain()
    {
        var facts = CheckedPlan.Facts(CheckedPlan.Plan(Connected));

        Assert.Equal(
            ["Cold water 6 15 L/min", "Hot water 4 3 L/min", "Drain 3 ", "Power 1 9 kW"],
            ScheduleTables.Connections(facts).Rows.Select(r => $"{r[0]} {r[1]} {r[2]}"));
        string csv = Encoding.UTF8.GetString(CsvSchedule.Write(Schedule.All(facts).Single(s => s.Name == "connections")));
        Assert.Contains("Cold water,6,15 L/min,", csv);
        Assert.Contains("Hot water,4,3 L/min,", csv);
    }

    /// <summary>Sheet 4 counted sinks and sheet 8 did not.</summary>
    [Fact]
    public void Sheet_4_and_sheet_8_print_the_same_sums()
    {
        var facts = CheckedPlan.Facts(CheckedPlan.Plan(Connected));
        var onSheet4 = NeedTable.Of(facts).Rows[^1].SelectMany(c => c.Figures);
        var onSheet8 = ScheduleTables.Connections(facts).Rows.SelectMany(r => r).SelectMany(c => c.Figures).ToList();

        Assert.Equal(5, onSheet4.Count());
        Assert.All(onSheet4, f => Assert.Contains(onSheet8, other => ReferenceEquals(f, other)));
        Assert.Contains(NeedTable.Of(facts).Rows, r => r[0].Text == "hz1" && r[2].Text == "w1" && r[3].Text == "w1");
        Assert.Contains(NeedTable.Of(facts).Rows, r => r[0].Text == "wh1" && r[2].Text == "main");
    }

    /// <summary>The check was content with a heater for hot water at a hand sink, and sheet 4 said "no point".</summary>
    [Fact]
    public void A_heater_serves_hot_water_where_no_point_does()
    {
        var facts = CheckedPlan.Facts(CheckedPlan.Plan("""
            plan "Heater alone"
              units metric
            shell shed 5000 x 3000 x 2600
            room rinse "Rinse" dirty from west to east
            water w1 cold in rinse, south wall, 700 from west, height 1200
            heater wh1 in rinse, west wall, 300 from north, 9 kW 150 L
            drain fd1 floor in rinse, centred, 2500 from west, 100
            sink s1 hand in rinse, 400 x 350, against north wall, centred
            """));

        var hot = facts.Supply.Of("s1", NeedKind.HotWater)!;
        Assert.Equal((SupplyChoice.Heater, "wh1"), (hot.Choice, hot.Point!.Id));
        Assert.DoesNotContain(CheckedPlan.Check(facts.Plan), f => f.Rule == "sink-not-served");
        Assert.Contains(NeedTable.Of(facts).Rows, r => r[1].Text == "hand sink s1" && r[3].Text == "wh1");
    }

    /// <summary>The check said that the room of the sink has no drain; sheet 4 led its waste to the next room.</summary>
    [Fact]
    public void A_sink_that_asks_for_a_drain_may_drain_to_the_next_room()
    {
        var facts = CheckedPlan.Facts(CheckedPlan.Plan("""
            plan "Lobby"
              units metric
            shell shed 8000 x 3000 x 2800
            room lobby "Lobby" staff from west to 2000
            room work "Work" clean from 2000 to east
            drain fd1 floor in work, 600 from west, centred, 100
            sink s1 hand in lobby, 400 x 350, corner north-east
              needs drain
            """));

        Assert.Equal("fd1", facts.Supply.Of("s1", NeedKind.Drain)!.Point!.Id);
        Assert.DoesNotContain(CheckedPlan.Check(facts.Plan)
, f => f.Rule.Contains("drain", StringComparison.Ordinal) && f.Things.Contains("s1"));
    }

    private const string Connected = """
        plan "Connections"
          units metric
        shell shed 8000 x 3000 x 2600
        room rinse "Rinse" dirty from west to east
        water w1 cold hot in rinse, south wall, 700 from west, height 1200
        hose hz1 on w1, 7.5 m
        heater wh1 in rinse, west wall, 300 from north, 9 kW 150 L
        drain fd1 floor in rinse, centred, 2500 from west, 100
        sink s1 hand in rinse, 400 x 350, against north wall, 1000 from west
        sink s2 hand in rinse, 400 x 350, against north wall, 3000 from west
        station b1 "Rinse bench" in rinse
          size 1200 x 600 x 900
          place against south wall, 1500 from west
          needs cold 8 L/min, drain
        station b2 "Trim bench" in rinse
          size 1200 x 600 x 900
          place against south wall, 4000 from west
          needs cold 4 L/min, hot 3 L/min at 60 C
        """;
}
