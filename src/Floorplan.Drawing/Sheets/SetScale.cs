using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Pages;
using Floorplan.Drawing.Sheets.GeneralArrangement;
using Floorplan.Drawing.Views;
using Floorplan.Drawing.Views.Findings;
using Floorplan.Drawing.Views.Flows;
using Floorplan.Drawing.Views.Openings;
using Floorplan.Drawing.Views.Stations;
using Floorplan.Language.Quantities;

namespace Floorplan.Drawing.Sheets;

/// <summary>
/// The one scale of all plan views of a set, so that they can be laid over each other: of those at which every plan view fits the paper
/// whole, the largest that leaves room for text.
/// </summary>
internal static class SetScale
{
    /// <summary>A picture that takes more of the page leaves no room for what explains it; own choice.</summary>
    private const double MostOfPage = 0.7;

    /// <summary>1:100 and 1/8 in to the foot: smaller pictures are of no use where parts of larger ones will do.</summary>
    private const double Useful = 100;

    /// <param name="first">The content of sheet 1.</param>
    public static double Of(SheetRequest request, SheetContent first)
    {
        var plan = request.Plan;
        var space = SheetComposer.Space(first);
        var findings = MarkedFinding.NumberAll(request.Findings);
        var widest =
            new PlanView(
                "Plan", plan,
                [
                    new StationLayer(plan, StationLook.Full), new OpeningLayer(plan),
                    new FlowLayer(plan, FlowLeg.Number(request.Space.LegRoutes, plan.Units)), new FindingLayer(plan, findings),
                ],
                set => OuterDimensions.Add(plan, set));
        double usual = ScaleSeries.SmallestWanted(plan.Units);
        return All(s => s <= usual && Fits(widest, s, space, plan.Units) && Share(widest.Measure(s), space) <= MostOfPage)
            ?? All(s => s <= usual && Fits(widest, s, space, plan.Units))

            // Ways far outside are shown in parts; the unit itself is seen whole as long as its scale is of use.
            ?? All(s => s <= usual && Fits(first.Views[0], s, space, plan.Units))
            ?? All(s => s <= Useful && Fits(first.Views[0], s, space, plan.Units))
            ?? ScaleSeries.For(plan.Units).Last(s => s <= Useful);

        double? All(Func<double, bool> holds) => ScaleSeries.For(plan.Units).Cast<double?>().FirstOrDefault(s => holds(s!.Value));
    }

    private static double Share(PaperSpace size, PageSpace space) => size.Width * size.Height / (space.Width * space.Height);

    private static bool Fits(ISheetView view, double scale, PageSpace space, UnitSystem units)
        => view.Measure(scale).Width <= space.Width && ViewRows.Pack([view], scale, space, units, centred: false) is not null;
}
