using Floorplan.Drawing.Charts;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Model;
using Floorplan.Sizing.Simulation.Gains;
using Floorplan.Sizing.Simulation.Plans;

namespace Floorplan.Drawing.Sheets.TheDay;

/// <summary>The pace of a line by one figure, or by two: then a line for each value of the second.</summary>
public static class GridPicture
{
    /// <summary>A family of more lines is a tangle; own choice.</summary>
    public const int MostLines = 12;

    private const double Width = 190;
    private const double Height = 110;

    /// <summary>Why there is no chart of these figures, as a sentence; null when there is.</summary>
    public static string? Problem(IReadOnlyList<VariedFigure> figures) => figures.Count > 2
        ? "a chart is of one figure or two: leave some --vary out, or write the table with --output csv"
        : figures.Count == 2 && figures[1].Count > MostLines
            ? FormattableString.Invariant(
                $"the second figure has {figures[1].Count} values, and each is a line of the chart: at most {MostLines}")
            : null;

    public static SheetScene Draw(Plan plan, PlannedDay day, IReadOnlyList<VariedFigure> figures, IReadOnlyList<GridRun> runs)
    {
        var standard = DrawingStandard.For(plan.Units);
        string unit = day.Planned.Unit;
        double target = day.Planned.TargetPerHour;
        double from = figures[0].From - 0.3;
        double to = figures[0].To + 0.3;
        string title = figures.Count == 1 ? $"Pace by {figures[0].Name}" : $"Pace by {figures[0].Name} and {figures[1].Name}";
        var frame = new CurveFrame(title, $"{unit}/h; dashed: the target", figures[0].Name, false, from, to)
        {
            Limit = [(from, target), (to, target)],
        };
        var lines = runs.GroupBy(r => figures.Count == 1 ? 0 : r.Values[1]).Select(g => new CurveSeries(
            figures.Count == 1 ? "" : FormattableString.Invariant($"{figures[1].Name} {g.Key}"),
            [.. g.Select(r => ((double)r.Values[0], r.Rate))], IsStep: false));
        return ChartPicture.Draw(
            "pace", plan.Head.Title, $"{title}: {unit} an hour, with a dashed line at the target.",
            [new CurveChart(frame, [.. lines], Width, Height, standard)], Width, standard);
    }
}
