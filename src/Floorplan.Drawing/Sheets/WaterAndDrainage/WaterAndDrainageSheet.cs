using Floorplan.Checks.Framework;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Symbols.Services;
using Floorplan.Drawing.Views;
using Floorplan.Drawing.Views.Findings;
using Floorplan.Drawing.Views.Openings;
using Floorplan.Drawing.Views.Rooms;
using Floorplan.Drawing.Views.Stations;
using Floorplan.Language.Quantities;
using Floorplan.Model.Services;
using Floorplan.Sizing;

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
        var facts = request.Facts;
        var runs = PipeRun.Of(facts.Supply);
        var findings = MarkedFinding.NumberOf(request.Findings, RuleGroup.WaterAndDrain);
        var view = new PlanView(
            "Water and drainage",
            plan,
            [
                new FallsLayer(facts),
                new StationLayer(plan, StationLook.NumberOnly),
                new WallLayer(plan),
                new OpeningLayer(plan),
                new HoseReachLayer(plan),
                new PipeLayer(facts, runs),
                new ServiceLayer(plan, ServiceSheet.Water),
                new LevelLayer(facts),
                new NeedLayer(facts),
                new FindingLayer(plan, findings),
                .. RevisionLayer.For(request),
                new DatumLayer(plan),
                new EndMarkLayer(plan),
                new RoomNameLayer(request.Facts),
            ]);
        return head with
        {
            Description = Describe(facts),
            Views = [view],
            Legend = [.. view.Legend],
            Tables = [.. Tables(facts)],
            Notes = [.. Notes(facts)],
            Findings = [.. findings.Select(f => f.Line)],
            Cautions = [Cautions.Water(plan.Units), Cautions.LocalCode],
        };
    }

    /// <summary>A sheet without water says so, and does not explain what it does not show.</summary>
    private static IEnumerable<string> Notes(PlanFacts facts)
    {
        var plan = facts.Plan;
        if (!ServiceSymbols.On(ServiceSheet.Water, plan).Any() && facts.Supply.All.Count == 0)
        {
            yield return "The plan names no water point, hose or drain, and nothing that needs one: there is nothing to pipe yet.";
            yield break;
        }

        yield return "Levels count from the finished floor at the highest point of each room, marked ±0: "
            + "level = slope × distance to the drain.";
        yield return "Water comes from the point of the room that is nearest to the edge of the thing, a guarded one first for a tank that "
            + "touches two; where the room has none, from the nearest of the plan.";
        string[] reach =
        [
            .. plan.Services.OfType<Hose>().Where(h => facts.HoseCover.FarthestOfRoom(h)?.Value <= h.Length?.Millimetres)
                .Select(ServiceLayer.Mark),
        ];
        if (reach.Length > 0)
        {
            yield return "Reaches all the floor of its room, on the way round what stands there: " + string.Join(", ", reach) + ".";
        }

        if (facts.WaterPiping is not null || facts.DrainLines.Lines.Count > 0)
        {
            yield return "Letters along a pipe give its size: as the plan says it, or as worked out in the tables here.";
        }

        yield return DatumWords.Note(plan.Shell.Kind);
        yield return TapeWords.Note(Tape.For(plan.Units));
    }

    private static IEnumerable<KeyTable> Tables(PlanFacts facts)
    {
        var points = ServiceSymbols.On(ServiceSheet.Water, facts.Plan).ToList();
        if (points.Count > 0)
        {
            yield return PointTable.Of(facts, points);
        }

        if (facts.Supply.All.Count > 0)
        {
            yield return NeedTable.Of(facts);
        }

        foreach (var table in SizedTable.Of(facts.WaterSizes).Concat(SizedTable.Of(facts.DrainSizes)))
        {
            yield return table;
        }
    }

    private static string Describe(PlanFacts facts) =>
        $"Water and drainage plan: {SheetHead.Count(facts.Plan.Services.OfType<WaterPoint>().Count(), "water point")}, "
        + $"{SheetHead.Count(facts.Plan.Services.OfType<Hose>().Count(), "hose")}, "
        + $"{SheetHead.Count(facts.Plan.Services.OfType<Drain>().Count(), "drain")}, "
        + $"{SheetHead.Count(facts.Plan.Stations.Count(facts.Uses.IsWet), "wet station")}, falls and levels.";
}
