using Floorplan.Checks.Framework;
using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Views;
using Floorplan.Drawing.Views.Findings;
using Floorplan.Drawing.Views.Openings;
using Floorplan.Drawing.Views.Rooms;
using Floorplan.Drawing.Views.Stations;
using Floorplan.Model;

namespace Floorplan.Drawing.Sheets.Inspection;

/// <summary>Sheet 9: every rule that applied with its figure, clause and result, what stands, and what was accepted and why.</summary>
public sealed class ChecksSheet : Sheet
{
    public override int Number => 9;

    public override string Name => "checks";

    public override string Title => "Checks";

    public override SheetContent Content(SheetRequest request, SheetContent head)
    {
        var plan = request.Plan;
        var findings = MarkedFinding.NumberAll(request.Findings);
        var results = RuleResult.Of(plan, request.Findings);
        var view = new PlanView(
            "Findings",
            plan,
            [
                new ZoneLayer(plan, edgeOnly: true),
                new StationLayer(plan, StationLook.NumberOnly),
                new WallLayer(plan),
                new OpeningLayer(plan),
                new FindingLayer(plan, findings),
                new EndMarkLayer(plan),
                new RoomNameLayer(request.Facts),
            ]);

        // A plan without a mark on it would say no more than sheet 1.
        bool shown = findings.Any(f => f.Finding.At is not null);
        return head with
        {
            Description =
                $"Checks: {SheetHead.Count(results.Count, "rule")} applied under code {plan.Head.Code.Word()}, "
                    + $"{SheetHead.Checks(request)}.",
            Views = shown ? [view] : [],
            Legend = shown ? [.. view.Legend] : [],
            Tables = [.. Accepted(findings), Rules(results)],
            Findings = [.. findings.Where(f => f.Finding.AcceptedBy is null).Select(f => f.Line)],
            Notes =
            [
                $"Code chosen in the plan: {plan.Head.Code.Word()}. A rule not listed has no figure under it.",
                NotJudged.Of(plan, request.Findings).Text + ".",
                .. NotJudged.NotChosen(plan.Head) is { } open ? [open + "."] : Array.Empty<string>(),
                "Sources not marked otherwise were read in a public copy; those marked as a reprint, from memory, common practice or own "
                    + "assumption have to be confirmed.",
            ],
            Cautions = [Cautions.LocalCode],
        };
    }

    private static IEnumerable<KeyTable> Accepted(IReadOnlyList<MarkedFinding> findings)
    {
        var accepted = findings.Where(f => f.Finding.AcceptedBy is not null).ToList();
        if (accepted.Count > 0)
        {
            yield return new KeyTable(
                "Accepted deviations",
                ["No", "What", "Reason, by whom"],
                [.. accepted.Select(f => (IReadOnlyList<Cell>)[$"{f.Number}", f.Finding.Message, f.Finding.AcceptedBy!.Text])]);
        }
    }

    private static KeyTable Rules(IReadOnlyList<RuleResult> results) => new(
        "Rules that applied",
        ["Rule", "Result", "Figure and source"],
        [
            .. results.GroupBy(r => r.Rule.Group).SelectMany(group => group
                .Select(r => (IReadOnlyList<Cell>)[r.Rule.Name, r.Text, r.FigureAndSource])
                .Prepend([group.Key.Title()])),
        ]);
}
