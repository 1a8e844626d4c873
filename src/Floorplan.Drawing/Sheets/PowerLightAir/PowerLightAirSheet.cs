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
using Floorplan.Sizing;

namespace Floorplan.Drawing.Sheets.PowerLightAir;

/// <summary>Sheet 5: panels with their working space, outlets, switches, what machines draw, light and air of each room.</summary>
public sealed class PowerLightAirSheet : Sheet
{
    public override int Number => 5;

    public override string Name => "power-light-air";

    public override string Title => "Power, light and air";

    public override SheetContent Content(SheetRequest request, SheetContent head)
    {
        var plan = request.Plan;
        var findings = MarkedFinding.NumberOf(request.Findings, RuleGroup.PowerAndLight);
        var points = ServiceSymbols.On(ServiceSheet.Power, plan).ToList();
        var view = new PlanView(
            "Power, light and air",
            plan,
            [
                new StationLayer(plan, StationLook.NumberOnly),
                new PanelSpaceLayer(request.Facts),
                new LampLayer(request.Facts),
                new WallLayer(plan),
                new OpeningLayer(plan),
                new ServiceLayer(plan, ServiceSheet.Power),
                new PowerNeedLayer(request.Facts),
                new FindingLayer(plan, findings),
                .. RevisionLayer.For(request),
                new DatumLayer(plan),
                new EndMarkLayer(plan),
                new LightAndAirLayer(plan, request.Facts.Light),
                new RoomNameLayer(request.Facts),
            ]);
        return head with
        {
            Description =
                $"Power, light and air: {SheetHead.Count(points.Count, "point")}, "
                    + $"{SheetHead.Count(request.Facts.Power.Uses.Count, "machine")} with power, "
                + $"light and air of {SheetHead.Count(plan.Rooms.Count, "room")}.",
            Views = [view],
            Legend = [.. view.Legend],
            Tables =
            [
                .. points.Count > 0 ? [PowerTables.Points(plan, points)] : Array.Empty<KeyTable>(),
                .. request.Facts.Power.Uses.Count > 0 ? [PowerTables.Loads(request.Facts)] : Array.Empty<KeyTable>(),
                .. PowerTables.Circuits(request.Facts) is { } circuits ? [circuits] : Array.Empty<KeyTable>(),
                PowerTables.Rooms(request.Facts),
            ],
            Notes = [.. Notes(request.Facts, points.Count > 0 || request.Facts.Power.Uses.Count > 0)],
            Findings = [.. findings.Select(f => f.Line)],
            Cautions = [Cautions.Power(plan.Shell.Kind), Cautions.LocalCode],
        };
    }

    /// <summary>A sheet without power says so, and does not explain what it does not show.</summary>
    private static IEnumerable<string> Notes(PlanFacts facts, bool hasPower)
    {
        if (hasPower)
        {
            yield return DatumWords.Note(facts.Plan.Shell.Kind);
            yield return TapeWords.Note(Tape.For(facts.Plan.Units));
            yield return "Circuits are as the plan names them or proposed. Breakers and copper are the smallest by the tables, each "
                + "circuit alone; a licensed electrician designs them.";
        }
        else
        {
            yield return "The plan names no power panel, outlet or switch, and nothing that draws power: there is nothing to wire yet.";
        }

        yield return "Light is the level at the height of the work.";
        if (facts.Lamps.Count > 0)
        {
            yield return "Lamps are drawn where even rows put them: the electrician moves them clear of ducts, pipes and hatches.";
        }
    }
}
