using Floorplan.Drawing.Charts;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Quantities;
using Floorplan.Sizing;

namespace Floorplan.Drawing.Sheets.TheDay;

/// <summary>The day chart by itself: what people and stations do, and what is out.</summary>
public static class DayPicture
{
    /// <param name="facts">Of a plan whose day can be run.</param>
    public static SheetScene Draw(PlanFacts facts)
    {
        var day = facts.DayInTime ?? throw new ArgumentException("the day of this plan is not run", nameof(facts));
        var standard = DrawingStandard.For(facts.Plan.Units);
        var planned = facts.Day.Planned;
        var charts = DayCharts.Lanes(facts, day, ChartPicture.UsualWidth, double.PositiveInfinity, standard);
        string rate = QuantityText.Coarse(facts.Day.Rate);
        string answer = facts.Day.KeepsUp ? "it keeps up" : $"the line makes {rate} {planned.Unit}/h at most";
        return ChartPicture.Draw(
            "day", $"{facts.Plan.Head.Title}: the day",
            $"{planned.Asked} are asked for; {answer}. Lanes of what each person and each "
                + "station is at through the day, and what is out beside the target.",
            [.. charts, new CurvesOfDay(facts, day, ChartPicture.UsualWidth, standard).Output], ChartPicture.UsualWidth, standard);
    }
}
