using System.Globalization;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.PowerAndLight;

/// <summary>Cooling units against the load of their rooms, and steam that nothing draws out.</summary>
public sealed class CoolingAndSteamTests
{
    private const string Cooler = """
        plan "Cooler"
          units metric
        shell shed 6000 x 4000 x 2600
          lining walls 50 "PIR panel", ceiling 50 "PIR panel"
        room store "Store" cold from west to east
          keep 2 C
        door d1 store to outside, south wall, 300 from west, 1000 x 2050, swings out, closes itself, opens from inside
        """;

    [Theory]
    [InlineData(0.98, 1)]
    [InlineData(1.001, 0)]
    [InlineData(0, 1)]
    public void A_unit_is_held_against_what_the_room_needs(double times, int findings)
    {
        double needs = CheckedPlan.Facts(CheckedPlan.Plan(Cooler)).ColdRooms[0].Duty.Value / 1000;
        string said = string.Create(CultureInfo.InvariantCulture, $"keep 2 C\n  cooling {needs * times:0.####} kW");

        var found = CheckedPlan.Check(Cooler.Replace("keep 2 C", said, StringComparison.Ordinal), "cooling-too-small");

        Assert.Equal(findings, found.Count);
        Assert.All(found, f => Assert.Equal(needs * 1000, f.LimitValue!.Value, 0.01));
    }

    [Fact]
    public void A_unit_in_btu_is_read_too()
        => Assert.Single(CheckedPlan.Check(
            Cooler.Replace("keep 2 C", "keep 2 C\n  cooling 900 Btu/h", StringComparison.Ordinal), "cooling-too-small"));

    [Fact]
    public void A_room_that_says_no_unit_is_not_judged() => Assert.Empty(CheckedPlan.Check(Cooler, "cooling-too-small"));

    private const string Scald = """
        plan "Steam"
          units metric
        shell shed 6000 x 4000 x 2600
        room scald "Scalding" dirty from west to east
        station tank "Scald tank" in scald
          size 900 x 700 x 900
          place against north wall, 1500 from west
          stays 1 min
          needs hot 8 L/min at 60 C
        """;

    [Theory]
    [InlineData("", 1)]
    [InlineData("air supply scald", 1)]
    [InlineData("air exhaust scald", 0)]
    public void An_open_tank_of_hot_water_wants_an_exhaust(string air, int findings)
        => Assert.Equal(findings, CheckedPlan.Check($"{Scald}\n{air}", "steam-without-extract").Count);

    /// <summary>Lukewarm water hardly steams, and a tap over a bench is no tank.</summary>
    [Theory]
    [InlineData("at 60 C", "at 30 C")]
    [InlineData("Scald tank", "Rinse bench")]
    public void Lukewarm_water_and_taps_do_not(string was, string now)
        => Assert.Empty(CheckedPlan.Check(
            Scald.Replace(was, now, StringComparison.Ordinal)
                .Replace(was == "Scald tank" ? "  stays 1 min\n" : "\r", "", StringComparison.Ordinal), "steam-without-extract"));

    /// <summary>A scald tank is one by its name, and a kettle boils by its own power; common practice.</summary>
    [Theory]
    [InlineData("  stays 1 min\n", "")]
    [InlineData("needs hot 8 L/min at 60 C", "needs cold 8 L/min, power 230 V 6 kW")]
    public void A_scald_tank_or_kettle_steams_by_its_name(string was, string now)
        => Assert.Single(CheckedPlan.Check(
            Scald.Replace(was, now, StringComparison.Ordinal)
                .Replace("Scald tank", was.StartsWith("needs", StringComparison.Ordinal) ? "Kettle" : "Scald tank",
                    StringComparison.Ordinal),
            "steam-without-extract"));
}
