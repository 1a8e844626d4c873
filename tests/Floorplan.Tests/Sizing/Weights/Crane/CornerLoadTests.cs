using Floorplan.Sizing.Weights.Crane;
using Xunit;

namespace Floorplan.Tests.Sizing.Weights.Crane;

public sealed class CornerLoadTests
{
    private const double Along = 5.853;
    private const double Across = 2.259;

    /// <summary>
    /// D9 of the engineering table, statics: 6000 kg, castings of a 20 ft box 5.853 x 2.259 m apart (ISO 668), the weight 0.4 m off along
    /// and 0.1 m off across: 1856, 1554, 1410 and 1180 kg.
    /// </summary>
    [Theory]
    [InlineData(1, 1, 1856)]
    [InlineData(1, -1, 1554)]
    [InlineData(-1, 1, 1410)]
    [InlineData(-1, -1, 1180)]
    public void The_worked_example_comes_out(int along, int across, double kilograms)
        => Assert.Equal(kilograms, CornerLoad.Of(6000, along * 0.4, Along, across * 0.1, Across), 0.5);

    /// <summary>Statics a second way: the four forces hold the weight, and turn nothing about any two points.</summary>
    [Theory]
    [InlineData(6000, 0.4, 0.1)]
    [InlineData(2300, 0, 0)]
    [InlineData(14_000, -1.3, 0.55)]
    [InlineData(900, 3.5, -0.2)]
    public void The_corners_hold_the_weight_and_do_not_turn_it(double whole, double east, double north)
    {
        var corners = (
            from x in new[] { -1, 1 }
            from y in new[] { -1, 1 }
            select (X: x * Along / 2, Y: y * Across / 2, Kg: CornerLoad.Of(whole, x * east, Along, y * north, Across))).ToList();

        Assert.Equal(whole, corners.Sum(c => c.Kg), 1e-6);
        foreach (var (px, py) in new[] { (-Along / 2, -Across / 2), (1.7, 4.2) })
        {
            Assert.Equal(whole * (east - px), corners.Sum(c => c.Kg * (c.X - px)), 1e-6);
            Assert.Equal(whole * (north - py), corners.Sum(c => c.Kg * (c.Y - py)), 1e-6);
        }
    }

    /// <summary>D9: legs of 6 m stand at 58.5° and the worst carries 21.36 kN. Two legs for all: 6000 kg / 2 at that angle.</summary>
    [Fact]
    public void Legs_of_6_m_carry_what_the_worked_example_says()
    {
        double angle = SlingLegs.Angle(6, Along, Across)!.Value;

        Assert.Equal(58.5, angle, 0.05);
        Assert.Equal(21_360, SlingLegs.Force(1856, angle), 15.0);
        Assert.Equal(3000 * 9.80665 / Math.Sin(angle * Math.PI / 180), SlingLegs.PairForce(6000, angle), 1e-6);
    }

    /// <summary>Half the diagonal of the corners of a 40 ft box is 6.1 m.</summary>
    [Fact]
    public void Legs_of_6_m_do_not_reach_the_corners_of_a_box_of_40_ft() => Assert.Null(SlingLegs.Angle(6, 11.985, Across));
}
