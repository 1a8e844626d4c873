using Floorplan.Language.Quantities;
using Floorplan.Model.Openings;
using Floorplan.Sizing.Frames;
using Xunit;

namespace Floorplan.Tests.Sizing.Frames;

public sealed class SteelSectionTests
{
    /// <summary>
    /// Masses in kg/m of the tables of EN 10219-2 (cold formed tube) and EN 10056-1 (angle), from memory; angles within 2 % as their
    /// radii are left out.
    /// </summary>
    [Theory]
    [InlineData(FrameForm.Tube, 40, 40, 3, 3.30, 0.01)]
    [InlineData(FrameForm.Tube, 50, 50, 3, 4.25, 0.01)]
    [InlineData(FrameForm.Tube, 60, 60, 4, 6.71, 0.01)]
    [InlineData(FrameForm.Tube, 100, 50, 4, 8.59, 0.01)]
    [InlineData(FrameForm.Angle, 50, 50, 5, 3.77, 0.02)]
    [InlineData(FrameForm.Angle, 40, 40, 4, 2.42, 0.02)]
    public void Mass_is_that_of_the_tables(FrameForm form, double face, double depth, double thickness, double table, double within)
    {
        var section =
            new SteelSection(form, Length.FromMillimetres(face), Length.FromMillimetres(depth), Length.FromMillimetres(thickness));
        Assert.InRange(section.MassPerMetre, table * (1 - within), table * (1 + within));
    }

    /// <summary>HSS 2 x 2 x 1/8: 3.05 lb/ft in US tables, from memory; they count a wall 7 % thinner than its name (0.116 in).</summary>
    [Fact]
    public void The_usual_inch_tube_weighs_what_US_tables_say_within_a_tenth()
        => Assert.InRange(SteelSection.Usual(UnitSystem.Feet).MassPerMetre * 0.3048 / 0.45359237, 3.05, 3.05 * 1.1);

    [Fact]
    public void Names_are_as_the_yard_says_them()
    {
        Assert.Equal("tube 50 × 50 × 3 mm", SteelSection.Usual(UnitSystem.Metric).Name(UnitSystem.Metric));
        Assert.Equal("tube 2\" × 2\" × 1/8\"", SteelSection.Usual(UnitSystem.Feet).Name(UnitSystem.Feet));
    }
}
