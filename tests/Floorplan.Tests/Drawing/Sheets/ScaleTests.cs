using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Quantities;
using Xunit;

namespace Floorplan.Tests.Drawing.Sheets;

/// <summary>Plans on paper at the scales of the trade.</summary>
public class ScaleTests
{
    // Computed in references/drawing.md A7 from the usual inside sizes of containers, to whole millimetres.
    [Theory]
    [InlineData(5898, 2352, 20, 295, 118)]
    [InlineData(5898, 2352, 50, 118, 47)]
    [InlineData(12032, 2352, 20, 602, 118)]
    [InlineData(12032, 2352, 50, 241, 47)]
    public void A_container_takes_this_much_paper(double length, double width, double denominator, double paperLength, double paperWidth)
    {
        var transform = new PlanTransform(denominator, new PaperPoint(0, 0));
        Assert.Equal(paperLength, transform.Size(length), 0);
        Assert.Equal(paperWidth, transform.Size(width), 0);
    }

    // ISO 5455 reductions and architects' scales (references/drawing.md A7).
    [Theory]
    [InlineData(UnitSystem.Metric, 20, "1:20")]
    [InlineData(UnitSystem.Metric, 50, "1:50")]
    [InlineData(UnitSystem.Feet, 24, "1/2\" = 1'-0\" (1:24)")]
    [InlineData(UnitSystem.Feet, 48, "1/4\" = 1'-0\" (1:48)")]
    [InlineData(UnitSystem.Feet, 96, "1/8\" = 1'-0\" (1:96)")]
    public void A_scale_is_named_as_rulers_name_it(UnitSystem units, double denominator, string text)
    {
        Assert.Contains(denominator, ScaleSeries.For(units));
        Assert.Equal(text, ScaleSeries.Text(denominator, units));
    }
}
