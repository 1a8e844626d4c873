using Floorplan.Sizing.Cold.Chilling;
using Xunit;

namespace Floorplan.Tests.Sizing.Cold;

public sealed class CoolingTimeTests
{
    private const double Minute = 60;
    private const double Hour = 3600;

    /// <summary>
    /// A published steak: half 10 mm, 9 W/m2K, k 0.45, α 0.91e-7, air of -11 C, its surface from 25 to 2 C: u 0.4328, first term 1.0311,
    /// 5590 s.
    /// </summary>
    [Fact]
    public void A_steak_in_cold_air()
    {
        double u = CoolingCurve.Root(0.2);
        var curve = CoolingCurve.Slab(0.01, 9, 0.45, 0.91e-7);

        Assert.Equal(0.4328, u, 0.0001);
        Assert.Equal(1.0311, curve.J, 0.0001);
        Assert.Equal(5590, curve.F * Math.Log10(curve.J * Math.Cos(u) * 36 / 13), 10.0);
    }

    /// <summary>
    /// Lacroix and Castaigne (1987), as the ASHRAE handbook prints their polynomial: within 0.25 % of the root up to Bi 10. Between 10 and
    /// 100 the printed one is up to 3 % off, so the root itself is used.
    /// </summary>
    [Theory]
    [InlineData(0.11)]
    [InlineData(0.2)]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(10)]
    [InlineData(100)]
    public void The_root_is_that_of_the_published_polynomial(double biot)
    {
        double b = Math.Log(biot);
        double printed = 0.860972 + (0.312133 * b) + (0.007986 * b * b) - (0.016192 * Math.Pow(b, 3)) - (0.001190 * Math.Pow(b, 4))
            + (0.000581 * Math.Pow(b, 5));

        Assert.Equal(printed, CoolingCurve.Root(biot), printed * 0.0025);
    }

    /// <summary>
    /// Meat Refrigeration (2002), table 16.7: a slab of beef of 50 mm in water of 0 C: 1.2 h from 70 to 10 C; 1.0 h from 50. With α
    /// 1.30e-7 and 500 W/m2K it comes within 8 %.
    /// </summary>
    [Theory]
    [InlineData(70, 1.2)]
    [InlineData(50, 1.0)]
    public void A_slab_of_beef_in_water(double from, double hours)
        => Assert.Equal(hours, CoolingCurve.Slab(0.025, 500, 0.47, 1.30e-7).Seconds(from, 10, 0)!.Value / Hour, hours * 0.08);

    /// <summary>
    /// A box of 100 x 170 x 280 mm, k 0.47, density 1090, c 3540, 25 W/m2K, from 30 to 5 C in air of 0 C: f 21 799 s, j 1.863, 6.35 h; a
    /// slab alone 8.37 h (engineering reference, D3).
    /// </summary>
    [Fact]
    public void A_box_cools_faster_than_its_thinnest_slab()
    {
        double diffusivity = 0.47 / (1090 * 3540);
        var box = CoolingCurve.Box(0.1, 0.17, 0.28, 25, 0.47, diffusivity);

        Assert.Equal(21_799, box.F, 5.0);
        Assert.Equal(1.863, box.J, 0.001);
        Assert.Equal(6.35, box.Seconds(30, 5, 0)!.Value / Hour, 0.01);
        Assert.Equal(8.37, CoolingCurve.Slab(0.05, 25, 0.47, diffusivity).Seconds(30, 5, 0)!.Value / Hour, 0.01);
    }

    /// <summary>
    /// A trial with bare birds of 0.9 to 1.6 kg in ice water, 32 to 4.4 C: 43 min, give or take 8. The thickness is fitted to it, so that
    /// other weights are what it tells.
    /// </summary>
    [Theory]
    [InlineData(1.25, 43, 0.5)]
    [InlineData(0.9, 43, 9)]
    [InlineData(1.6, 43, 9)]
    public void Birds_in_ice_water_take_as_long_as_in_the_trial(double kilograms, double minutes, double within)
        => Assert.Equal(minutes, BirdChilling.InWater(kilograms).Seconds(32, 4.4, 0)!.Value / Minute, within);

    /// <summary>A thesis (Huezo, University of Georgia): 150 min in air of -1.1 C at 3.5 m/s; worked out 144 (D1).</summary>
    [Fact]
    public void Birds_in_cold_air_take_as_long_as_in_a_thesis()
    {
        double minutes = BirdChilling.InAir(1.4, 25).Seconds(38, 4, -1.1)!.Value / Minute;

        Assert.Equal(144, minutes, 1.0);
        Assert.Equal(150, minutes, 15.0);
    }

    /// <summary>1.8 kg in water of 1 C from 38 to 4.4 C: 65 min; a solid ball of it would give 216 (D1).</summary>
    [Fact]
    public void A_bird_is_no_solid_ball() => Assert.Equal(65, BirdChilling.InWater(1.8).Seconds(38, 4.4, 1)!.Value / Minute, 0.5);

    /// <summary>
    /// Kerens and Visser 1978, sides of beef at 0 C and 0.75 m/s until the deep leg is at 7 C: 100 kg 19 h lean, 24.5 h fat; 125 kg 22 and
    /// 27 h.
    /// </summary>
    [Theory]
    [InlineData(100, 19, 24.5)]
    [InlineData(125, 22, 27)]
    public void A_side_of_beef_lies_between_lean_and_fat(double kilograms, double lean, double fat)
    {
        var beef = Floorplan.Sizing.Cold.Products.ProductHeats.Of("beef").Parts!;

        Assert.InRange(SolidBody.Curve(kilograms, beef, 15).Seconds(38, 7, 0)!.Value / Hour, lean, fat);
    }

    [Fact]
    public void What_is_no_colder_than_asked_never_cools_to_it()
    {
        var curve = CoolingCurve.Slab(0.02, 25, 0.47, 1.3e-7);

        Assert.Null(curve.Seconds(25, 4, 4));
        Assert.Equal(0, curve.Seconds(3, 4, 0));
    }

    [Fact]
    public void Heavier_things_take_longer()
        => Assert.True(BirdChilling.InWater(3).Seconds(38, 4.4, 1) > BirdChilling.InWater(2).Seconds(38, 4.4, 1));
}
