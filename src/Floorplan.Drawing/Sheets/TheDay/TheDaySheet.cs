using Floorplan.Checks.Framework;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Views.Findings;
using Floorplan.Language.Quantities;
using Floorplan.Sizing;
using Floorplan.Sizing.Simulation.Charts;

namespace Floorplan.Drawing.Sheets.TheDay;

/// <summary>Sheet 10: the day as it is run: who and what is busy when, what fills up, what comes out, and what would help.</summary>
public sealed class TheDaySheet : Sheet
{
    public override int Number => 10;

    public override string Name => "the-day";

    public override string Title => "The day";

    public override SheetContent Content(SheetRequest request, SheetContent head)
        => (request.Facts.DayInTime is { } day ? OfDay(request.Facts, day, head) : NotRun(request.Facts, head)) with
        {
            // What is missing is a finding too, and stands in the table of what to write.
            Findings = [.. MarkedFinding.NumberOf(request.Findings, RuleGroup.TheDay)
                .Where(f => f.Finding.Rule != "step-without-figure").Select(f => f.Line)],
        };

    private static SheetContent OfDay(PlanFacts facts, DayInTime day, SheetContent head)
    {
        var charts = DayCharts.Of(facts, day, SheetComposer.Space(head));
        var planned = facts.Day.Planned;
        string makes = facts.Day.KeepsUp ? "the line keeps up" : $"the line makes {QuantityText.Coarse(facts.Day.Rate)} {planned.Unit}/h";
        return head with
        {
            Description = $"The day at the pace of the target, {planned.Asked}: {makes}. What people and stations are at through "
                + "the day, what fills up, what comes out, and what one change would gain.",
            Views = charts.Views,
            Tables = [.. DayTables.Of(facts)],
            Notes = [.. DayNotes.Of(facts, charts.NotDrawn)],
            Cautions = [Cautions.Pace, Cautions.LocalCode],
        };
    }

    private static SheetContent NotRun(PlanFacts facts, SheetContent head) => head with
    {
        Description = "The day was not run: figures are missing. The sheet lists what to write.",
        Views = [],
        Tables = [DayTables.Needs(facts), DayTables.Figures(facts.Day.Planned.Unit, facts.Plan.Units)],
        Notes =
        [
            "With these figures in the plan this sheet shows what each person and station is at through the day, what fills up, what comes "
                + "out, and what one change would gain.",
        ],
        Cautions = [Cautions.LocalCode],
    };
}
