using Floorplan.Sizing.Trailers;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Sizing.Trailers;

public sealed class TrailerLoadTests
{
    /// <summary>
    /// Worked example T-ex5 of the utilities table, from the hitch: box 1800 kg at 3.2 m, full scald tank 400 at 1.5, plucker 90 at 2.2,
    /// full chill tank 900 at 4.2, tables 150 at 3.5, heater 120 at 0.8; axles at 3.6 m. Together 3460 kg at 3.1673 m, 3044.2 on the axles,
    /// 415.8 on the hitch, 12.02 %. Tanks of 60 and 150 kg empty, by hand: 7299 kg m / 2370 kg, 2027.5 on the axles, 14.45 %.
    /// </summary>
    [Theory]
    [InlineData(0, 3460, 3167.3, 3044.2, 415.8, 12.02)]
    [InlineData(1, 2370, 3079.7, 2027.5, 342.5, 14.45)]
    public void The_worked_example_comes_out(int state, double total, double toWeight, double onAxles, double onHitch, double percent)
    {
        var load = Loads("", """
            station scald "Scald tank" in work
              size 600 x 600 x 900
              place against north wall, 450 from west
              weight 60 kg empty, 400 kg full
            station plucker "Plucker" in work
              size 500 x 500 x 900
              place against north wall, 1200 from west
              weight 90 kg
            station chill "Chill tank" in work
              size 1200 x 600 x 900
              place against north wall, 2850 from west
              weight 150 kg empty, 900 kg full
            station tables "Tables" in work
              size 600 x 600 x 900
              place against south wall, 2450 from west
              weight 150 kg
            station heater "Water heater" in work
              size 100 x 300 x 900
              place against south wall, 0 from west
              weight 120 kg
            """, 1800)[state];

        Assert.Equal(total, load.Total.Value, 0.05);
        Assert.Equal(toWeight, load.ToWeight.Value, 0.05);
        Assert.Equal(onAxles, load.OnAxles.Value, 0.05);
        Assert.Equal(onHitch, load.OnHitch.Value, 0.05);
        Assert.Equal(percent, load.HitchShare.Value * 100, 0.005);
    }

    /// <summary>
    /// By hand, with panels of 9.81 kg/m² (G4: 9.8) and plywood of 0.7 kg/m² for each mm (BS 648): inside 4.8 x 2.0 x 2.15355 m (a floor of
    /// 4 3/4 in and a roof of 2 in, usual ones). Walls 13.6 x 2.15355 x 9.81 = 287.3 kg, less the doors in the east
    /// end 2.0 x 2.15355 x 9.81 = 42.25, ceiling 9.6 x 9.81 = 94.2, floor 9.6 x 17.5 = 168.0. With 1000 kg of trailer and a tank of 500 kg
    /// at 5.0 m: (1549.5 x 3.2 + 500 x 5.0 - 42.25 x 5.65) / 3.6 = 2005.5 kg on the axles of 2007.25 kg. Before linings counted it was 1583
    /// of 1500 kg.
    /// </summary>
    [Fact]
    public void Linings_and_floor_load_hitch_and_axles()
    {
        var load = Loads("  lining walls 50, ceiling 50, floor 25\n", """
            station tank "Tank" in work
              size   1000 x 800 x 1000
              place  against north wall, 3700 from west
              weight 500 kg
            """, 1000)[0];

        Assert.Equal(2007.25, load.Total.Value, 0.1);
        Assert.Equal(2005.5, load.OnAxles.Value, 0.1);
        Assert.Equal(1.75, load.OnHitch.Value, 0.1);
    }

    /// <summary>A box of 5000 mm, 700 mm behind the coupling.</summary>
    private static IReadOnlyList<TrailerLoad> Loads(string lining, string things, int own) => CheckedPlan.Facts(CheckedPlan.Plan($"""
        plan "Trailer"
          units metric
          code none
        shell trailer 5 m x 2.2 m x 2.4 m
          walls  50
        {lining}  hitch  west, 700 ahead
          axles  2, 3600 from hitch
          weight {own} kg empty
        room work "Work room" dry from west to east
        {things}
        """)).TrailerLoads;
}
