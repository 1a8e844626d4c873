using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Views;
using Floorplan.Drawing.Views.Findings;
using Floorplan.Drawing.Views.Flows;
using Floorplan.Drawing.Views.Openings;
using Floorplan.Drawing.Views.Rooms;
using Floorplan.Drawing.Views.Stations;
using Floorplan.Model;
using Floorplan.Sizing;

namespace Floorplan.Drawing.Sheets.FlowAndHygiene;

/// <summary>Sheet 2: hygiene zones, the real route of every stream, where streams meet, hand-wash points, and all findings.</summary>
public sealed class FlowAndHygieneSheet : Sheet
{
    public override int Number => 2;

    public override string Name => "flow-and-hygiene";

    public override string Title => "Flow and hygiene zones";

    public override SheetContent Content(SheetRequest request, SheetContent head)
    {
        var plan = request.Plan;
        var legs = FlowLeg.Number(request.Space.LegRoutes, plan.Units);
        var crossings = StreamCrossing.Gather(request.Space.Meetings);
        var findings = MarkedFinding.NumberAll(request.Findings);
        var view = new PlanView(
            "Flow and hygiene zones",
            plan,
            [
                new ZoneLayer(plan, edgeOnly: false),
                new StationLayer(plan, StationLook.Quiet),
                new RailLayer(plan),
                new WallLayer(plan),
                new OpeningLayer(plan),
                new HandWashLayer(plan),
                new FlowLayer(plan, legs),
                new CrossingLayer(plan, crossings),
                new FindingLayer(plan, findings),
                .. RevisionLayer.For(request),
                new FlowEndLayer(plan, legs),
                new EndMarkLayer(plan),
                new RoomNameLayer(request.Facts),
            ]);
        return head with
        {
            Description = Describe(plan, legs, crossings, SheetHead.Checks(request)),
            Views = [view],
            Legend = [.. view.Legend],
            Tables = [.. Tables(request.Facts, legs, crossings)],
            Findings = [.. findings.Select(f => f.Line)],
            Cautions = [Cautions.Flow, Cautions.LocalCode],
        };
    }

    private static IEnumerable<KeyTable> Tables(PlanFacts facts, IReadOnlyList<FlowLeg> legs, IReadOnlyList<StreamCrossing> crossings)
    {
        if (legs.Count > 0)
        {
            yield return LegTable.Of(legs, facts);
        }

        if (crossings.Count > 0)
        {
            yield return CrossingTable.Of(crossings, legs, facts.Ways);
        }
    }

    private static string Describe(Plan plan, IReadOnlyList<FlowLeg> legs, IReadOnlyList<StreamCrossing> crossings, string checks) =>
        $"Hygiene zones and the routes of {SheetHead.Count(plan.Flows.Count, "flow")} in {SheetHead.Count(legs.Count, "leg")}; "
        + $"{SheetHead.Count(crossings.Count, "place")} where streams meet. Checks: {checks}.";
}
