using Floorplan.Checks.Framework;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Views;
using Floorplan.Drawing.Views.Findings;
using Floorplan.Drawing.Views.Openings;
using Floorplan.Drawing.Views.Rooms;
using Floorplan.Drawing.Views.Stations;
using Floorplan.Language.Quantities;

namespace Floorplan.Drawing.Sheets.Stations;

/// <summary>Sheet 3: where people stand, how far they reach, what floor stays clear, and at what height they work.</summary>
public sealed class StationsSheet : Sheet
{
    public override int Number => 3;

    public override string Name => "stations";

    public override string Title => "Stations";

    public override SheetContent Content(SheetRequest request, SheetContent head)
    {
        var plan = request.Plan;
        var findings = MarkedFinding.NumberOf(request.Findings, RuleGroup.Hands);
        var view = new PlanView(
            "Stations",
            plan,
            [
                new ClearSpaceLayer(plan),
                new StationLayer(plan, StationLook.Full),
                new WorkerLayer(plan),
                new ReachLayer(plan),
                new RailLayer(plan),
                new WallLayer(plan),
                new OpeningLayer(plan),
                new FindingLayer(plan, findings),
                .. RevisionLayer.For(request),
                new EndMarkLayer(plan),
                new RoomNameLayer(request.Facts),
            ]);
        int workers = plan.Stations.Sum(s => s.Workers.Count);
        return head with
        {
            Description =
                $"Stations: {SheetHead.Count(plan.Stations.Count, "item")} and {SheetHead.Count(workers, "standing place")}, reach, "
                    + "clear floor and heights.",
            Views = [view],
            Legend = [.. view.Legend],
            Tables = plan.Stations.Count > 0 ? [WorkTable.Of(plan)] : [],
            Findings = [.. findings.Select(f => f.Line)],
            Notes =
            [
                ReachLayer.NoteOf(plan),
                "Heights from the finished floor.",
                TapeWords.Note(Tape.For(plan.Units)),
            ],
            Cautions = [Cautions.LocalCode],
        };
    }
}
