using Floorplan.Drawing.Charts;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Pages;
using Floorplan.Model;
using Floorplan.Sizing;
using Floorplan.Sizing.Simulation.Charts;

namespace Floorplan.Drawing.Sheets.TheDay;

/// <summary>The charts of the day, for a page: lanes over its whole width, curves beside each other.</summary>
/// <param name="NotDrawn">What has a curve for which there is no room, by name.</param>
internal sealed record DayCharts(IReadOnlyList<ISheetView> Views, IReadOnlyList<string> NotDrawn)
{
    /// <summary>More curves are looked at by nobody; own choice.</summary>
    private const int MostCurves = 24;

    /// <summary>A curve is about so wide, mm; own choice.</summary>
    private const double CurveWidth = 115;

    private static readonly DayState[] PersonStates =
        [DayState.Work, DayState.Carry, DayState.Walk, DayState.Empty, DayState.Wash, DayState.Rest, DayState.Wait];

    private static readonly DayState[] StationStates =
        [DayState.ByHand, DayState.ByItself, DayState.NoHands, DayState.Blocked, DayState.Starved];

    public static DayCharts Of(PlanFacts facts, DayInTime day, PageSpace space)
    {
        var standard = DrawingStandard.For(facts.Plan.Units);
        double height = space.Title.Top - space.Inside.Top - PageSpace.Pad - ViewStrip.Height;
        var lanes = Lanes(facts, day, space.Width, height, standard);
        int across = (int)Math.Max(1, Math.Floor(space.Width / CurveWidth));
        double width = Math.Min(space.Width, ((space.Width + PageSpace.Pad) / across) - PageSpace.Pad - 0.01);
        var curves = new CurvesOfDay(facts, day, width, standard);
        return new DayCharts(
            [.. lanes, curves.Output, .. curves.Pace, .. day.Fills.Take(MostCurves).Select(curves.Fill)],
            [.. day.Fills.Skip(MostCurves).Select(f => f.Of)]);
    }

    /// <summary>What people do, and what stations do.</summary>
    /// <param name="height">Of one chart at most, mm; further lanes stand in further charts.</param>
    public static IReadOnlyList<LaneChart> Lanes(PlanFacts facts, DayInTime day, double width, double height, DrawingStandard standard)
    {
        string[] people = [.. day.People.Select(l => l.Name)];
        string[] stations = [.. day.Stations.Select(l => NameOf(facts.Plan, l.Name))];
        double names = LaneChart.NameWidth([.. people, .. stations], standard);
        return
        [
            .. Charts("What people do", day.People, people, PersonStates),
            .. Charts("What stations do", day.Stations, stations, StationStates),
        ];

        IEnumerable<LaneChart> Charts(
            string title, IReadOnlyList<DayLane> all, IReadOnlyList<string> printed, IReadOnlyList<DayState> states)
        {
            var parts = LaneChart.Parts(printed, height, standard).ToList();
            return parts.Select((p, i) => new LaneChart(
                parts.Count == 1 ? title : FormattableString.Invariant($"{title}, {i + 1} of {parts.Count}"), day,
                [.. all.Skip(p.From).Take(p.Count)], [.. printed.Skip(p.From).Take(p.Count)], states, facts.Day.Planned.Work,
                names, width, standard));
        }
    }

    /// <summary>As on sheet 1: <c>7 Chill tank</c>.</summary>
    public static string NameOf(Plan plan, string id) => plan.Stations.FirstOrDefault(s => s.Id == id) is { } station
        ? FormattableString.Invariant($"{station.Item} {station.Caption}")
        : id;
}
