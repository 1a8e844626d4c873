using Floorplan.Sizing.Cold.Chilling;
using Xunit;

namespace Floorplan.Tests.Sizing.Cold;

public sealed class FreezingTests
{
    private const double Hour = 3600;

    /// <summary>
    /// A slab of 10 cm between plates of -34 C: 4.2 h in card of 1 mm, 2.1 h bare (Unit Operations in Food Processing; inputs from memory).
    /// </summary>
    [Theory]
    [InlineData(52.6, 4.2)]
    [InlineData(600, 2.1)]
    public void A_slab_between_plates(double film, double hours)
        => Assert.Equal(hours, Freezing.Plank(FrozenShape.Slab, 1090, 256e3, -2, -34, 0.1, film, 1.6) / Hour, 0.01);

    /// <summary>
    /// A ball of 7 cm, -1.25 C in air of -40 C, k 1.2, 250 kJ/kg (a published exercise): 0.72 h at 50 W/m2K. At 30 it prints no usable
    /// answer; 3607 s is worked out.
    /// </summary>
    [Theory]
    [InlineData(50, 2603)]
    [InlineData(30, 3607)]
    public void A_ball_in_cold_air(double film, double seconds)
        => Assert.Equal(seconds, Freezing.Plank(FrozenShape.Ball, 1000, 250e3, -1.25, -40, 0.07, film, 1.2), 1.0);

    /// <summary>Plank's own factors: a long cylinder takes half as long as a slab of that thickness, a ball a third.</summary>
    [Fact]
    public void Shapes_are_as_two_to_one()
    {
        double slab = Freezing.Plank(FrozenShape.Slab, 1000, 250e3, -2, -30, 0.1, 30, 1.4);

        Assert.Equal(slab / 2, Freezing.Plank(FrozenShape.LongCylinder, 1000, 250e3, -2, -30, 0.1, 30, 1.4), 1e-6 * slab);
        Assert.Equal(slab / 3, Freezing.Plank(FrozenShape.Ball, 1000, 250e3, -2, -30, 0.1, 30, 1.4), 1e-6 * slab);
    }

    /// <summary>
    /// Chicken, half 30 mm, from 4 to -18 C in air of -32 C: about 4 h are told of plants at 2 to 3 m/s; worked out 4.24 h at 30 W/m2K and
    /// 4.88 at 25 (D2).
    /// </summary>
    [Theory]
    [InlineData(30, 4.24)]
    [InlineData(25, 4.88)]
    public void Chicken_in_a_freezer(double film, double hours)
        => Assert.Equal(hours, Freezing.Pham(0.03, film, 1.4, 1060, 3310, 1550, 233.5e3, 4, -18, -32)!.Value / Hour, 0.01);

    /// <summary>Beef of 250 mm from 5 to -10 C in air of -30 C: 36.16 h (D4; inputs from memory).</summary>
    [Fact]
    public void Beef_in_a_freezer()
        => Assert.Equal(36.16, Freezing.Pham(0.125, 30, 1.108, 1050, 3520, 2050, 0.745 * 333_220, 5, -10, -30)!.Value / Hour, 0.01);

    [Fact]
    public void Nothing_freezes_in_warm_air() => Assert.Null(Freezing.Pham(0.03, 30, 1.4, 1060, 3310, 1550, 233.5e3, 4, -18, 2));
}
