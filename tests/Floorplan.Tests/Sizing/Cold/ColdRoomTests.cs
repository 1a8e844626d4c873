using Floorplan.Sizing;
using Floorplan.Sizing.Cold.Loads;
using Floorplan.Sizing.Working;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Sizing.Cold;

/// <summary>What a plan's cold room needs, against sums done by hand and against what must hold for any room.</summary>
public sealed class ColdRoomTests
{
    /// <summary>A bare room of 6 x 4 x 2.5 m inside, without linings: U is that of its films (ISO 6946), 1 / 0.17 and 1 / 0.21.</summary>
    private const string Bare = """
        plan "Cold shed"
          units metric
          product birds, 2 kg each
        shell shed 6200 x 4200 x 2500
          walls 100
        room store "Store" cold from west to east
          keep 5 C
        door d1 store to outside, south wall, 300 from west, 1000 x 2000, swings out, closes itself, opens from inside
        """;

    /// <summary>By hand: walls 20 m x 2.5 m, 35 C outside (not said), 5.882 W/m2K and 30 K.</summary>
    [Fact]
    public void Heat_through_walls_is_u_times_area_times_difference()
    {
        var load = Only(Bare);

        Assert.Equal(20 * 2.5 / 0.17 * 30, Heat(load, "walls to outside"), 5.0);
        Assert.Equal(24 / 0.21 * 30, Heat(load, "ceiling"), 5.0);
    }

    /// <summary>The same with a lining of a panel of 50 mm: 49 mm of foam of 0.025 W/mK (refrigeration handbook).</summary>
    [Fact]
    public void A_lining_keeps_heat_out()
    {
        var lined = Only(Bare.Replace("  walls 100", "  walls 100\n  lining walls 50 \"PIR panel\"", StringComparison.Ordinal));

        double round = 2 * (5.9 + 3.9);
        Assert.Equal(round * 2.5 / (0.17 + (0.049 / 0.025)) * 30, Heat(lined, "walls to outside"), 1.0);
    }

    /// <summary>ASHRAE Refrigeration (from memory): 10 % for safety; 18 h of running is taken.</summary>
    [Fact]
    public void The_unit_carries_all_loads_away_in_its_hours()
    {
        var load = Only(Bare);

        Assert.Equal(load.Lines.Sum(l => l.Heat.Value), load.Load.Value, 1e-6);
        Assert.Equal(load.Load.Value * 1.1 * 24 / 18, load.Duty.Value, 1e-6);
    }

    private const string Line = """
        plan "Birds"
          units metric
          product birds, 2 kg each
        shell shed 9000 x 4000 x 2700
        room work "Work" clean from west to 6000
        room cooler "Cooler" cold from 6000 to east
          keep 2 C
        partitions thickness 100
        door d1 work to outside, west wall, centred, 1000 x 2050, swings out, closes itself, opens from inside
        door d2 work to cooler, centred, 1000 x 2050, swings work, closes itself, opens from inside
        station bench "Bench" in work
          size 1200 x 600 x 900
          place against north wall, 3000 from west
          worker south
          work 20 s each
        store rack "Rack" in cooler
          size 1600 x 500 x 1800
          place against north wall, centred
          holds 10 shelves x 30 birds
        flow product
          outside -> d1 -> bench -> d2 -> rack by hand
        day
          target 60 birds/h for 2 h
          crew work 2
        """;

    /// <summary>By hand: 120 birds of 2 kg, 3.31 kJ/kgK (Geankoplis), from the 25 C of the room before to 2 C, over 24 h.</summary>
    [Fact]
    public void What_the_day_brings_in_is_cooled()
        => Assert.Equal(120 * 2 * 3.31 * 23 * 1000 / 86_400, Heat(Only(Line), "birds"), 0.5);

    /// <summary>The same after a chill tank: 4 C.</summary>
    [Fact]
    public void What_was_chilled_before_brings_little()
    {
        string chilled = Line
            .Replace("station bench \"Bench\"", "station chill \"Chill tank\"", StringComparison.Ordinal)
            .Replace("bench", "chill", StringComparison.Ordinal)
            .Replace("  work 20 s each", "  work 20 s each\n  stays 60 min\n  holds 80 birds\n  needs ice", StringComparison.Ordinal);

        Assert.Equal(120 * 2 * 3.31 * 2 * 1000 / 86_400, Heat(Only(chilled), "birds"), 0.5);
    }

    /// <summary>120 loads by hand, one bird each, out and back: 240 passages of 15 s (ASHRAE, from memory) are 1 h of 24.</summary>
    [Fact]
    public void Openings_of_a_door_are_counted_from_the_day()
    {
        var share = Only(Line).Figures.Single(f => f.Name == "share of the day that d2 is open");

        Assert.Equal(1 / 24.0, share.Value, 1e-9);
    }

    [Fact]
    public void Without_a_day_a_door_is_taken_as_opened_thirty_times()
    {
        var share = Only(Bare).Figures.Single(f => f.Name == "share of the day that d1 is open");

        Assert.Equal(30 * 15 / 86_400.0, share.Value, 1e-9);
        Assert.Contains(share.Inputs, i => i.Source is { Confirmed: Origin.OwnAssumption });
    }

    [Fact]
    public void Colder_rooms_thinner_linings_more_product_and_hotter_days_never_need_less()
    {
        double duty = Only(Line).Duty.Value;

        Assert.True(Only(Line.Replace("keep 2 C", "keep -4 C", StringComparison.Ordinal)).Duty.Value > duty);
        Assert.True(Only(Line.Replace("x 2700", "x 2700\n  lining walls 80, ceiling 80", StringComparison.Ordinal)).Duty.Value < duty);
        Assert.True(Only(Line.Replace("2 kg each", "3 kg each", StringComparison.Ordinal)).Duty.Value > duty);
        Assert.True(
            Only(Line.Replace("units metric", "units metric\n  climate -5 C, 40 C 40 %", StringComparison.Ordinal)).Duty.Value > duty);
    }

    [Fact]
    public void A_plan_in_feet_needs_the_same()
    {
        string feet = Line.Replace("units metric", "units feet", StringComparison.Ordinal)
            .Replace("9000 x 4000 x 2700", "9000 mm x 4000 mm x 2700 mm", StringComparison.Ordinal)
            .Replace("to 6000", "to 6000 mm", StringComparison.Ordinal).Replace("from 6000 to", "from 6000 mm to", StringComparison.Ordinal)
            .Replace("thickness 100", "thickness 100 mm", StringComparison.Ordinal)
            .Replace("1000 x 2050", "1000 mm x 2050 mm", StringComparison.Ordinal)
            .Replace("1200 x 600 x 900", "1200 mm x 600 mm x 900 mm", StringComparison.Ordinal)
            .Replace("1600 x 500 x 1800", "1600 mm x 500 mm x 1800 mm", StringComparison.Ordinal)
            .Replace("3000 from west", "3000 mm from west", StringComparison.Ordinal);

        var load = Only(feet);

        Assert.Equal(Only(Line).Duty.Value, load.Duty.Value, 0.01);
        Assert.EndsWith("Btu/h", load.Duty.Text);
    }

    [Fact]
    public void What_is_not_said_is_told_with_what_to_write()
    {
        var cold = Facts(Bare.Replace("  keep 5 C\n", "", StringComparison.Ordinal)).ColdSizes!;

        Assert.Contains(cold.Missing, m => m.Write == "keep 2 C in room store");
        Assert.Contains(cold.Missing, m => m.Write == "climate -12 C, 34 C 40 %");
        Assert.DoesNotContain(
            Facts(Bare.Replace("units metric", "units metric\n  climate -12 C, 34 C 40 %", StringComparison.Ordinal)).ColdSizes!.Missing,
            m => m.Write.StartsWith("climate", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("keep 5 C", "keep 500 C")]
    [InlineData("keep 5 C", "keep -100 C")]
    [InlineData("keep 5 C", "keep 35 C")]
    [InlineData("units metric", "units metric\n  climate -100 C, 500 C 100 %")]
    [InlineData("units metric", "units metric\n  climate 0 C, 60 C 100 %")]
    [InlineData("2 kg each", "0 kg each")]
    [InlineData("2 kg each", "1000 t each")]
    [InlineData("walls 100", "walls 100\n  lining walls 1, ceiling 1, floor 1")]
    [InlineData("1000 x 2000", "10 x 10")]
    public void Whatever_numbers_stand_in_the_file_every_figure_is_a_number(string was, string now)
    {
        foreach (string text in new[] { Bare, Line })
        {
            var facts = Facts(text.Replace(was, now, StringComparison.Ordinal));

            Assert.All(facts.Sizes.Figures, f => Assert.True(double.IsFinite(f.Value), f.ToString()));
            Assert.All(facts.Sizes.Figures, f => Assert.DoesNotContain("NaN", f.ToString(), StringComparison.Ordinal));
        }
    }

    /// <summary>A warm room against the dew point of its air: steel without insulation sweats (engineering reference, D13).</summary>
    [Fact]
    public void Bare_steel_sweats_and_a_lining_does_not()
    {
        string wet = Bare.Replace("units metric", "units metric\n  climate -5 C, 30 C 70 %", StringComparison.Ordinal);
        string dry = wet.Replace("walls 100", "walls 100\n  lining walls 50, ceiling 50", StringComparison.Ordinal);

        Assert.Equal("yes", Facts(wet).ColdSizes!.Rows.Single(r => r.What == "dew on walls of store").Value);
        Assert.Equal("none", Facts(dry).ColdSizes!.Rows.Single(r => r.What == "dew on walls of store").Value);
    }

    /// <summary>
    /// 5 lb in ice water of 1 C from 38 to 4.4 C: by the slab fitted to 43 min for 1.25 kg, (2.268 / 1.25)^⅔ x 50.9 min = 76 min.
    /// </summary>
    [Fact]
    public void A_chill_tank_says_how_long_its_birds_take()
    {
        var facts = Facts(File.ReadAllText(Repository.At("templates", "poultry-40ft.unit")));
        var row = facts.ColdSizes!.Rows.Single(r => r.What == "cooling birds in chill");

        Assert.Equal(76 * 60, row.Figure!.Value, 60.0);
        Assert.Contains("estimate", row.Remark);
        Assert.Contains("90 min", row.Remark);
    }

    [Fact]
    public void What_cannot_be_estimated_is_told()
    {
        string text = File.ReadAllText(Repository.At("templates", "poultry-40ft.unit"))
            .Replace("product   birds, 5 lb each", "product   birds", StringComparison.Ordinal);

        var row = Facts(text).ColdSizes!.Rows.Single(r => r.What == "cooling in chill");

        Assert.Equal("not estimated", row.Value);
        Assert.Contains("product birds, 2 kg each", row.Remark);
    }

    [Fact]
    public void A_day_that_cannot_be_run_is_told_with_what_to_write()
        => Assert.Contains(
            Facts(Line.Replace("  work 20 s each\n", "", StringComparison.Ordinal)).ColdSizes!.Missing,
            m => m.What.Contains("no time for bench", StringComparison.Ordinal) && !m.Write.Contains('`', StringComparison.Ordinal));

    [Fact]
    public void Loads_stand_in_a_table_of_the_room()
    {
        var table = Assert.Single(Facts(Line).ColdSizes!.Tables);

        Assert.Equal("Loads of cooler", table.Title);
        Assert.All(table.Rows, r => Assert.Equal(table.Heads.Count, r.Count));
        Assert.Contains(table.Rows, r => r[0] == "partition to work");
        Assert.Contains(table.Rows, r => r[0] == "door d2");
    }

    [Fact]
    public void A_plan_without_a_cold_room_has_nothing_to_cool()
        => Assert.Null(Facts(Bare.Replace("cold from", "dry from", StringComparison.Ordinal)).ColdSizes);

    private static PlanFacts Facts(string text) => CheckedPlan.Facts(CheckedPlan.Plan(text));

    private static ColdRoomLoad Only(string text) => Assert.Single(Facts(text).ColdRooms);

    private static double Heat(ColdRoomLoad load, string name) => load.Lines.Single(l => l.Name == name).Heat.Value;
}
