using Floorplan.Drawing.Charts;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Quantities;
using Floorplan.Sizing.Sizes;

namespace Floorplan.Drawing.Reports;

/// <summary>What changes an answer most, as a picture of the report.</summary>
internal static class SwingPicture
{
    /// <param name="subject">With swings.</param>
    public static SheetScene Draw(SizedSubject subject, UnitSystem units)
    {
        var standard = DrawingStandard.For(units);
        return ChartPicture.Draw(
            "what-matters", "What matters most",
            "Each figure from its low to its high end, all others in the middle: what that does to the surplus of the first year, building "
                + "paid. The table has the numbers.",
            [new SwingChart(subject.Swings, "Surplus of the first year, building paid", ChartPicture.UsualWidth, standard)],
            ChartPicture.UsualWidth, standard);
    }
}
