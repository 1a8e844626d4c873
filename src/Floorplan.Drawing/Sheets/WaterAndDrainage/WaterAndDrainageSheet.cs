using Floorplan.Checks.Framework;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Symbols.Services;
using Floorplan.Drawing.Views;
using Floorplan.Model;
using Floorplan.Model.Services;

namespace Floorplan.Drawing.Sheets.WaterAndDrainage;

/// <summary>Sheet 4: water points, hoses, runs, drains, falls and levels.</summary>
public sealed class WaterAndDrainageSheet : Sheet
{
    public override int Number => 4;

    public override string Name => "water-and-drainage";

    public override string Title => "Water and drainage";

    public override SheetContent Content(SheetRequest request, SheetContent head)
    {
        var plan = request.Plan;
        var runs = PipeRuns.Of(plan);
        var findings = MarkedFinding.NumberOf(request.Findings, RuleGroup.WaterAndDrain);
        var view = new PlanView(
            "Water and drainage",
            plan,
            [
                new FallsLayer(plan),
                new StationLayer(plan, StationLook.NumberOnly),
                new WallLayer(plan),
                new OpeningLayer(plan),
                new HoseReachLayer(plan),
                new PipeLayer(plan, runs),
                new ServiceLayer(plan, ServiceSheet.Water),
                new LevelLayer(plan),
                new NeedLayer(plan),
                new FindingLayer(plan, findings),
                .. RevisionLayer.For(request),
                new DatumLayer(plan),
                new EndMarkLayer(plan),
                new RoomNameLayer(request.Facts),
            ]);
        return head with
        {
            Description = Describe(plan),
            Views = [view],
            Legend = [.. view.Legend],
            Tables = [.. Tables(plan, runs)],
            Notes =
            [
                "Levels count from the finished floor at the highest point of each room, marked ±0: level = slope × distance to the drain.",
                "Points: X east and Y north from the steel datum, the outside face of the shell at its south-west corner; heights from the finished floor.",
            ],
            Findings = [.. findings.Select(f => f.Line)],
            Cautions = [Cautions.Water(plan.Units), Cautions.LocalCode],
        };
    }

    private static IEnumerable<KeyTable> Tables(Plan plan, IReadOnlyList<PipeRun> runs)
    {
        var points = ServiceSymbols.On(ServiceSheet.Water, plan).ToList();
        if (points.Count > 0)
        {
            yield return PointTable.Of(plan, points);
        }

        if (plan.Stations.Any(s => s.IsWet))
        {
            yield return NeedTable.Of(plan, runs);
        }
    }

    private static string Describe(Plan plan) =>
        $"Water and drainage plan: {SheetHead.Count(plan.Services.OfType<WaterPoint>().Count(), "water point")}, "
        + $"{SheetHead.Count(plan.Services.OfType<Hose>().Count(), "hose")}, "
        + $"{SheetHead.Count(plan.Services.OfType<Drain>().Count(), "drain")}, "
        + $"{SheetHead.Count(plan.Stations.Count(s => s.IsWet), "wet station")}, falls and levels.";
}
