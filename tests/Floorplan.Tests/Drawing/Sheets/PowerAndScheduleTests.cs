using Floorplan.Drawing.Scene;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Drawing.Sheets;

/// <summary>Sheets 5 and 8: what the electrician and the buyer read, every figure from the plan.</summary>
public class PowerAndScheduleTests
{
    private const string Plan = """
        plan "Box"
          units metric
        shell shed 6000 x 4000 x 2600
        room work "Work" dry from west to east
          finish floor "resin", walls "panel"
        door d1 work to outside, south wall, 400 from west, 900 x 2050, swings out
        station saw "Bone saw" in work
          size 800 x 700 x 1500
          place against north wall, 500 from west
          needs power 400 V 1.5 kW
          weight 120 kg empty
        station tank "Tank" in work
          size 1000 x 700 x 900
          place against north wall, 2500 from west
          needs cold 12 L/min, hot 6 L/min at 60 C, drain, power 230 V 2 kW
          weight 60 kg empty, 500 kg full
        panel p1 in work, south wall, 2000 from west, 63 A 400 V three-phase
        outlet x1 in work, east wall, 500 from south, height 1100, 16 A 230 V, gfci
        switch k1 in work, south wall, 1500 from west, height 1100
        light work 540 lux
        air supply work 300 m3/h
        """;

    [Fact]
    public void Loads_points_light_and_air_are_all_there()
    {
        string[] texts = Texts(5);
        Assert.Contains("3.5 kW", texts);
        Assert.Contains("400 V 1.5 kW", texts);
        Assert.Contains("power panel", texts);
        Assert.Contains("switch", texts);
        Assert.Contains("16 A 230 V gfci", texts);
        Assert.Contains("540 lux", texts);
        Assert.Contains("300 m³/h", texts);
    }

    /// <summary>In a room that is full the level has no empty floor to stand on; it was left out without a word.</summary>
    [Fact]
    public void A_light_level_that_finds_no_floor_stands_in_the_table_of_rooms()
    {
        const string full = """

            room closet "Closet" dry area 700 x 700, in work, corner south-east
            store shelf "Shelf" in closet, 640 x 640 x 1800, at 20, 20
            light closet 215 lux
            """;
        string[] texts = [.. DrawnPlans.Draw(Plan + full, [5]).Texts().Select(t => t.Text)];
        int list = Array.IndexOf(texts, "Light and air by room");
        Assert.True(list >= 0, string.Join(" | ", texts));
        Assert.Contains("215 lux", texts[list..]);
        Assert.Contains("Closet", texts[list..]);
    }

    [Fact]
    public void The_working_space_of_the_panel_is_drawn_as_deep_as_the_rule_measures_it()
    {
        var pages = DrawnPlans.Draw(Floorplan.Tests.Checks.Support.Headed.With(Plan, "code us"), [5]);
        var space = PaperBox.Of(pages.Items<PolylineItem>().Single(p => p.Group == "panel-space:p1").Points);

        // 3 ft deep and 30 in wide (NEC 110.26(A)(1) and (2)), at whatever scale: their ratio stays.
        Assert.Equal(914.4 / 762, space.Height / space.Width, 6);
    }

    [Fact]
    public void Schedules_add_up_what_the_items_say()
    {
        string[] texts = Texts(8);
        Assert.Contains("620 kg", texts);
        Assert.Contains("180 kg", texts);
        Assert.Contains("12 L/min", texts);
        Assert.Contains("6 L/min", texts);
        Assert.Contains("resin", texts);
        Assert.Contains("panel", texts);
    }

    private static string[] Texts(int sheet) => [.. DrawnPlans.Draw(Plan, [sheet]).Texts().Select(t => t.Text)];
}
