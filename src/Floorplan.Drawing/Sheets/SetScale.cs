using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Pages;
using Floorplan.Drawing.Pages.Parts;
using Floorplan.Drawing.Sheets.GeneralArrangement;
using Floorplan.Drawing.Views;
using Floorplan.Drawing.Views.Findings;
using Floorplan.Drawing.Views.Flows;
using Floorplan.Drawing.Views.Openings;
using Floorplan.Drawing.Views.Stations;

namespace Floorplan.Drawing.Sheets;

/// <summary>
/// The one scale of all plan views of a set, so that they can be laid over each other: of those at which every plan view fits the paper
/// whole, the largest that leaves room for text.
/// </summary>
internal static class SetScale
{
    /// <summary>A picture that takes more of the page leaves no room for what explains it; own choice.</summary>
    private const double MostOfPage = 0.7;

    private const OuterRows Least = OuterRows.WithoutItemsAndOpenings;

    /// <summary>1:100 and 1/8 in to the foot: smaller pictures are of no use where parts of larger ones will do.</summary>
    private const double Useful = 100;

    /// <param name="head">Of sheet 1.</param>
    /// <returns>
    /// The scale, and the request: without some rows round sheet 1 where the plan would be too small with them.
    /// </returns>
    public static (double Scale, SheetRequest Request) Of(SheetRequest request, SheetContent head)
    {
        var plan = request.Plan;
        var space = SheetComposer.Space(head);
        double usual = ScaleSeries.SmallestWanted(plan.Units);
        PlanLayer[] unitLayers = [new StationLayer(plan, StationLook.Full), new OpeningLayer(plan)];
        PlanLayer[] allLayers =
        [
            .. unitLayers, new FlowLayer(plan, FlowLeg.Number(request.Space.LegRoutes, plan.Units)),
            new FindingLayer(plan, MarkedFinding.NumberAll(request.Findings)),
        ];
        var units = Enum.GetValues<OuterRows>().ToDictionary(rows => rows, rows => View(rows, unitLayers));
        foreach (var rows in Enum.GetValues<OuterRows>())
        {
            var widest = View(rows, allLayers);
            double? scale = First(s => s <= usual && Fits(widest, s) && Share(widest.Measure(s), space) <= MostOfPage)
                ?? First(s => s <= usual && Fits(widest, s))

                // Ways far outside are shown in parts; the unit itself is seen whole.
                ?? First(s => s <= usual && Fits(units[rows], s));
            if (scale is { } found)
            {
                return (found, request with { Rows = rows });
            }
        }

        // Seen whole and small rather than large and in parts, as long as its scale is of use.
        var all = request with { Rows = OuterRows.All };
        return First(s => s <= Useful && Fits(units[OuterRows.All], s)) is { } whole ? (whole, all)
            : First(s => s <= Useful && Fits(units[Least], s)) is { } small ? (small, request with { Rows = Least })
            : (ScaleSeries.For(plan.Units).Last(s => s <= Useful), request with { Rows = Least });

        double? First(Func<double, bool> holds) => ScaleSeries.For(plan.Units).Cast<double?>().FirstOrDefault(s => holds(s!.Value));

        bool Fits(PlanView view, double scale) => ViewParts.Fits(view, scale, space, plan.Units);

        PlanView View(OuterRows rows, IReadOnlyList<PlanLayer> layers)
            => new("Plan", plan, layers, set => OuterDimensions.Add(plan, set, rows));
    }

    private static double Share(PaperSpace size, PageSpace space) => size.Width * size.Height / (space.Width * space.Height);
}
