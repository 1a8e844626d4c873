using Floorplan.Drawing.Charts;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Language.Quantities;
using Floorplan.Sizing;
using Floorplan.Sizing.Simulation.Charts;

namespace Floorplan.Drawing.Sheets.TheDay;

/// <summary>The curves of a day: what comes out, what fills up, what a crew gains.</summary>
internal sealed class CurvesOfDay(PlanFacts facts, DayInTime day, double width, DrawingStandard standard)
{
    private const double Height = 58;

    /// <summary>Room at both ends of an axis of whole numbers, for the marks at the first and the last.</summary>
    private const double BesideNumbers = 0.3;

    private string Unit => facts.Day.Planned.Unit;

    public ISheetView Output
    {
        get
        {
            var planned = facts.Day.Planned;
            var frame = Time("Output", $"{planned.Things} out; dashed: the target") with { Limit = planned.Target };
            return Chart(frame, [new CurveSeries("", Of(day.Output, 1))]);
        }
    }

    /// <summary>One chart for all crews; none where their runs would take too long.</summary>
    public IEnumerable<ISheetView> Pace
    {
        get
        {
            var paces = facts.CrewPaces;
            if (paces.Count == 0)
            {
                yield break;
            }

            double from = paces.Min(p => p.Rates[0].People) - BesideNumbers;
            double to = paces.Max(p => p.Rates[^1].People) + BesideNumbers;
            double target = facts.Day.Planned.TargetPerHour;
            var frame = new CurveFrame(
                "Pace with more or fewer people", $"{Unit}/h at most; dashed: the target; ring: the plan",
                "people in the crew, others as they are", false, from, to)
            {
                Limit = [(from, target), (to, target)],
            };
            yield return Chart(frame, [.. paces.Select(p => new CurveSeries(
                p.Crew, [.. p.Rates.Select(r => ((double)r.People, r.Rate))], IsStep: false)
            {
                Now = (p.Now, p.Rates.First(r => r.People == p.Now).Rate),
            })]);
        }
    }

    public ISheetView Fill(DayCurve curve)
    {
        bool mass = curve.Unit == DayCurve.Kilograms;
        var printed = PrintedUnits.Of(Measure.Mass, facts.Plan.Units);
        double factor = mass ? printed.From(1) : 1;
        string unit = mass ? printed.Symbol : curve.Unit;
        string holds = curve.Holds is { } most
            ? $"dashed: holds {QuantityText.Coarse(most * factor)}"
            : "the plan does not say what it holds";
        string full = curve.FullAt is { } at ? $"; full at {ClockText.Of(at)}" : "";
        string name = DayCharts.NameOf(facts.Plan, curve.Of);
        string title = curve.Kind == DayCurveKind.Queue ? $"Waiting at {name}" : $"Filling of {name}";
        var frame = Time(title, $"{unit}; {holds}{full}") with
        {
            Limit = curve.Holds is { } line ? [(0, line * factor), (day.End, line * factor)] : [],
            Mark = curve is { FullAt: { } when, Holds: { } top } ? (when, top * factor) : null,
        };
        return Chart(frame, [new CurveSeries("", Of(curve, factor))]);
    }

    private CurveFrame Time(string title, string head) => new(title, head, TimeAxis.Caption, true, 0, day.End);

    private ISheetView Chart(CurveFrame frame, IReadOnlyList<CurveSeries> series) => new CurveChart(frame, series, width, Height, standard);

    private static IReadOnlyList<(double X, double Y)> Of(DayCurve curve, double factor)
        => [.. curve.Points.Select(p => ((double)p.At, p.Value * factor))];
}
