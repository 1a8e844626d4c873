using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.PowerAndLight;

/// <summary>Voltages and circuits where no figure decides, and where the rules stay silent.</summary>
public sealed class CircuitRuleTests
{
    /// <summary>
    /// US supplies of 240 V have a middle that gives 120 V; 208 V three-phase gives 208 and 120 V; 400 V three-phase gives 230 V.
    /// Common practice.
    /// </summary>
    [Theory]
    [InlineData("us", "100 A 240 V single-phase", "120 V 1 kW", 0)]
    [InlineData("us", "100 A 240 V single-phase", "230 V 1 kW", 0)]
    [InlineData("us", "100 A 240 V single-phase", "208 V 1 kW three-phase", 1)]
    [InlineData("us", "100 A 208 V three-phase", "120 V 1 kW", 0)]
    [InlineData("us", "100 A 208 V three-phase", "208 V 1 kW", 0)]
    [InlineData("us", "100 A 208 V three-phase", "480 V 1 kW three-phase", 1)]
    [InlineData("us", "100 A 120 V single-phase", "230 V 1 kW", 1)]
    [InlineData("eu", "63 A 230 V single-phase", "120 V 1 kW", 1)]
    [InlineData("eu", "63 A 230 V single-phase", "240 V 1 kW", 0)]
    [InlineData("eu", "63 A 400 V three-phase", "230 V 1 kW", 0)]
    [InlineData("eu", "63 A 400 V three-phase", "400 V 1 kW", 0)]
    [InlineData("eu", "63 A 230 V single-phase", "400 V 1 kW", 1)]
    [InlineData("none", "63 A", "230 V 1 kW", 0)]
    public void A_panel_gives_the_voltages_of_its_supply(string code, string panel, string needs, int found)
        => Assert.Equal(found, CheckedPlan.Check(Plan(code, panel, needs), "voltage-mismatch").Count);

    [Fact]
    public void A_three_phase_vat_is_not_for_a_single_phase_panel()
    {
        var finding = Assert.Single(CheckedPlan.Check(Plan("eu", "63 A 230 V single-phase", "400 V 6 kW three-phase"), "voltage-mismatch"));
        Assert.Contains("takes three phases", finding.Message);
        Assert.Contains("three-phase", finding.Mend);
        Assert.Equal(["p1", "saw"], finding.Things.Order());
    }

    [Theory]
    [InlineData("20 A 120 V", 1)]
    [InlineData("20 A 240 V", 0)]
    [InlineData("20 A", 0)]
    public void A_machine_of_230_V_is_not_for_an_outlet_of_120_V(string outlet, int found)
    {
        string text = Plan("us", "100 A 240 V single-phase", "230 V 1 kW")
            + $"\n  circuit 1\noutlet x1 in pack, north wall, 4000 from west, height 1100, {outlet}, circuit 1";
        var all = CheckedPlan.Check(text, "voltage-mismatch");
        Assert.Equal(found, all.Count);
        Assert.All(all, f => Assert.Equal(["saw", "x1"], f.Things));
    }

    /// <summary>NEC Table 430.248: 2 hp at 115 V draw 24 A; of the 1.5 kW at the shaft a circuit of 20 A would carry the 12.4 A.</summary>
    [Fact]
    public void A_motor_loads_its_circuit_by_the_table()
    {
        string text = Plan("us", "100 A 240 V single-phase", "120 V 2 hp")
            + "\n  circuit 1\noutlet x1 in pack, north wall, 4000 from west, height 1100, 20 A 120 V, circuit 1";
        Assert.Equal(120, Assert.Single(CheckedPlan.Check(text, "circuit-overloaded")).Measured!.Value, 6);
    }

    /// <summary>The mending names a cable of the table that keeps to the limit.</summary>
    [Fact]
    public void A_long_cable_is_told_with_the_size_that_would_do()
    {
        string text = Plan("eu", "63 A 230 V single-phase", "230 V 3 kW").Replace("6000 x 3000", "60000 x 3000", StringComparison.Ordinal);
        var finding = Assert.Single(CheckedPlan.Check(text, "voltage-drop"));
        Assert.Matches("have (2.5|4|6|10) mm² pulled, which loses", finding.Mend);
    }

    [Fact]
    public void A_plan_without_a_panel_has_no_such_finding()
    {
        string text = Plan("us", "", "480 V 50 kW three-phase");
        Assert.DoesNotContain(
            CheckedPlan.Check(text), f => f.Rule is "voltage-mismatch" or "voltage-drop" or "panel-too-small" or "circuit-overloaded");
    }

    private static string Plan(string code, string panel, string needs) => $"""
        plan "Voltages"
          units metric
          code {code}
        shell shed 6000 x 3000 x 2600
        room pack "Packing" dry from west to east
        {(panel.Length > 0 ? $"panel p1 in pack, east wall, 1500 from south, {panel}" : "")}
        station saw "Saw" in pack
          size 600 x 600 x 900
          place against north wall, 1000 from west
          needs power {needs}
        """;
}
