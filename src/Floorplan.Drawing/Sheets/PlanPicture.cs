using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Hatching;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Sheets.PowerLightAir;
using Floorplan.Drawing.Views;
using Floorplan.Drawing.Views.Findings;
using Floorplan.Drawing.Views.Flows;
using Floorplan.Drawing.Views.Openings;
using Floorplan.Drawing.Views.Rooms;
using Floorplan.Drawing.Views.Stations;

namespace Floorplan.Drawing.Sheets;

/// <summary>A plan as a picture for a page: the plan with its routes and findings, no frame, no tables.</summary>
public static class PlanPicture
{
    /// <summary>Paper mm; pictures are as wide as a page column at most where a scale allows it. Own choice.</summary>
    private const double Widest = 190;
    private const double Tallest = 130;

    public static SheetScene Draw(SheetRequest request, string name, string title)
    {
        var plan = request.Plan;
        var legs = FlowLeg.Number(request.Space.LegRoutes, plan.Units);
        var findings = MarkedFinding.NumberAll(request.Findings);
        var view = new PlanView(
            title,
            plan,
            [
                new ZoneLayer(plan, edgeOnly: true),
                new ClearSpaceLayer(plan),
                new StationLayer(plan, StationLook.Quiet),
                new WorkerLayer(plan),
                new RailLayer(plan),
                new WallLayer(plan),
                new OpeningLayer(plan),
                new FlowLayer(plan, legs),
                new ServiceLayer(plan),
                new FindingLayer(plan, findings),
                new EndMarkLayer(plan),
                new LightAndAirLayer(plan, request.Facts.Light),
                new RoomNameLayer(request.Facts),
            ]);
        var scales = ScaleSeries.For(plan.Units);
        double denominator = scales.FirstOrDefault(s => Fits(view.Measure(s)), scales[^1]);
        var space = view.Measure(denominator);
        var scene = new SceneBuilder(denominator);
        var labels = new LabelPlacer(scene);
        var box = PaperBox.At(new(0, 0), space.Width, space.Height);
        view.Draw(new ViewCanvas(scene, labels, box, denominator, DrawingStandard.For(plan.Units)));
        labels.Place(box, hasKey: false);
        SceneHatches.Draw(scene);
        string found = string.Join("; ", request.Findings.Select((f, i) => $"{i + 1}: {f.Message}"));
        return new SheetScene(name, title, found.Length == 0
            ? "Plan without findings."
            : found, space.Width, space.Height, [.. scene.Items], denominator)
        {
            Datum = scene.Datum,
        };
    }

    private static bool Fits(PaperSpace space) => space.Width <= Widest && space.Height <= Tallest;
}
