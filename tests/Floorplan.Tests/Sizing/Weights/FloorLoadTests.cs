using Floorplan.Sizing.Weights;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Sizing.Weights;

/// <summary>
/// ISO 668 (public copy): a 20 ft box is 5867 x 2330 mm inside. BS 648:1964 (secondary copy): plywood 0.7 kg/m² for each mm.
/// </summary>
public sealed class FloorLoadTests
{
    /// <summary>By hand: 2400 kg on 1.2 m are 2000 kg on a metre; plywood of 50 mm over 2.23 m of width 35 x 2.23 = 78 kg.</summary>
    [Fact]
    public void A_metre_carries_what_stands_on_it_and_the_floor_itself()
    {
        var load = Of("lining walls 50, floor 50", Tank(""))!;

        Assert.Equal(2000 + (35 * 2.23), load.Load.Value, 0.5);
        Assert.Equal("tank", Assert.Single(load.Things).Id);
        Assert.Equal(2, load.Load.Inputs.Count);
    }

    [Fact]
    public void What_hangs_loads_the_shell_and_not_the_floor()
    {
        Assert.Equal(2000, Of("doors west", Tank(""))!.Load.Value, 1e-6);
        Assert.Empty(Of("doors west", Tank("\n  hung\n  underside 1000"))!.Things);
    }

    private static FloorLoad? Of(string shell, string things) => CheckedPlan.Facts(CheckedPlan.Plan($"""
        plan "Box"
          units metric
        shell container 20 ft high-cube
          {shell}
        room work "Work room" dry from west to east
        {things}
        """)).FloorLoad;

    private static string Tank(string more) =>
        "station tank \"Tank\" in work\n  size 1200 x 800 x 1000\n  place against north wall, 1000 from west\n"
        + $"  weight 100 kg empty, 2400 kg full{more}";
}
