using Floorplan.Drawing.Charts;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Quantities;
using Floorplan.Model.Shells;
using Floorplan.Sizing.Weights.Crane;

namespace Floorplan.Drawing.Reports;

/// <summary>The box from above with what each corner carries on a crane, and where its weight lies.</summary>
internal static class LiftPicture
{
    /// <param name="lifts">At least one.</param>
    public static SheetScene Draw(IReadOnlyList<CraneLift> lifts, Shell shell, UnitSystem units)
    {
        var standard = DrawingStandard.For(units);
        return ChartPicture.Draw(
            "corners", "On a crane",
            "The box from above, empty and full: the weight on each corner, and the centre of weight. The table has the numbers.",
            [.. lifts.Select(l => new LiftSketch(l, shell, ChartPicture.UsualWidth, standard))], ChartPicture.UsualWidth, standard);
    }
}
