using Floorplan.Checks.Framework;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Views;
using Floorplan.Drawing.Views.Findings;
using Floorplan.Drawing.Views.Openings;
using Floorplan.Drawing.Views.Rooms;
using Floorplan.Drawing.Views.Stations;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model;

namespace Floorplan.Drawing.Sheets.GeneralArrangement;

/// <summary>Sheet 1: rooms, stations, doors and their setting-out.</summary>
public sealed class GeneralArrangementSheet : Sheet
{
    public override int Number => 1;

    public override string Name => "general-arrangement";

    public override string Title => "General arrangement";

    public override SheetContent Content(SheetRequest request, SheetContent head)
    {
        var plan = request.Plan;
        var findings = Findings(request);
        var view = new PlanView(
            "Plan",
            plan,
            [
                new ZoneLayer(plan, edgeOnly: true),
                new ClearSpaceLayer(plan),
                new StationLayer(plan, StationLook.Full),
                new WorkerLayer(plan),
                new RailLayer(plan),
                new WallLayer(plan),
                new OpeningLayer(plan),
                new FindingLayer(plan, findings),
                .. RevisionLayer.For(request),
                new EndMarkLayer(plan),
                new InnerDimensionLayer(plan),
                new RoomNameLayer(request.Facts),
            ],
            set => OuterDimensions.Add(plan, set, request.Rows));
        return head with
        {
            Description = Describe(plan, SheetHead.Checks(request)),
            Views = [view],
            Legend = [.. view.Legend],
            Tables = [.. RevisionLayer.Table(request), StationKeyTable.Of(plan), OpeningKeyTable.Of(plan)],
            Notes = [.. Notes(plan, request.Rows), .. plan.Head.Notes],
            Findings = [.. findings.Select(f => f.Line)],
            Cautions = Cautions.Building(plan.Shell.Kind),
        };
    }

    /// <summary>
    /// What must be settled before anything is built as drawn: errors and warnings but those that sheets 2 and 4 are for.
    /// </summary>
    private static IReadOnlyList<MarkedFinding> Findings(SheetRequest request)
    {
        RuleGroup[] groups = [.. Enum.GetValues<RuleGroup>().Except([RuleGroup.Hygiene, RuleGroup.WaterAndDrain])];
        return [.. MarkedFinding.NumberOf(request.Findings, groups)
            .Where(f => f.Finding.AcceptedBy is null && f.Finding.Severity != Severity.Note)];
    }

    private static string Describe(Plan plan, string checks) =>
        $"General arrangement plan of a {plan.Shell.Name}: {SheetHead.Count(plan.Rooms.Count, "room")}, "
            + $"{SheetHead.Count(plan.Stations.Count, "item")}, "
        + $"{SheetHead.Count(plan.Openings.Count, "opening")}, with setting-out dimensions. Checks: {checks}.";

    private static IEnumerable<string> Notes(Plan plan, OuterRows rows)
    {
        var tape = Tape.For(plan.Units);
        yield return plan.Units == UnitSystem.Metric
            ? "Dimensions in millimetres, to finished faces and clear openings. Measure on site before cutting."
            : "Dimensions in feet and inches, to finished faces and clear openings. Measure on site before cutting.";
        yield return TapeWords.NoteOfChains(tape);
        yield return $"Shell: {plan.Shell.Name}. Inside height {tape.Sentence(plan.Shell.CeilingHeight)} finished. "
            + $"The plan is cut {tape.Sentence(PlanCut.Height)} above the floor; what is above is dashed.";
        if (plan.Stations.Count > 0)
        {
            yield return "From west, south: to the item's south-west corner, from the west and south faces of its room.";
        }

        if (rows != OuterRows.All)
        {
            string left = rows == OuterRows.WithoutItems ? "items" : "items and openings";
            yield return $"No rows of dimensions for {left} round this plan: they would make it too small. The keys give their places.";
        }

        if (OpeningKeyTable.Marks(plan) is { } marks)
        {
            yield return marks;
        }
    }
}
