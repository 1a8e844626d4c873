using Floorplan.Language.Quantities;
using Floorplan.Sizing;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Plans;

namespace Floorplan.Drawing.Reports;

/// <summary>The day in tables: pace, hours, stations, people, stores.</summary>
internal static class DayChapter
{
    /// <param name="facts">Of a plan whose day can be run.</param>
    public static IEnumerable<ReportBlock> Blocks(PlanFacts facts)
    {
        var day = facts.Day;
        var planned = day.Planned;
        if (day is not { Paced: { } paced, FlatOut: { } fast })
        {
            yield break;
        }

        yield return new ReportTable(
            "Pace and hours", ["What", "How much"],
            [
                ["asked", planned.Asked],
                ["the line makes", $"{QuantityText.Coarse(day.Rate)} {planned.Unit}/h"],
                .. DayFrame.Of(facts.Plan, day) is { } frame ? Hours(frame) : [],
            ]);
        yield return new ReportTable(
            "Stations, as fast as the line can", ["Station", "At work", "Done, not taken on", "Most waiting"],
            [
                .. fast.Steps.Index()
                    .Where(s => planned.Stations[s.Index] is not null && fast.Line.Steps[s.Index].Places != LineStep.Unlimited)
                    .Select(s => new[]
                    {
                        planned.Stations[s.Index]!.Caption, Share(s.Item.GoingTime / fast.Line.Steps[s.Index].Places, fast.End),
                        Share(s.Item.BlockedTime / fast.Line.Steps[s.Index].Places, fast.End), QuantityText.Plain(s.Item.MostWaiting),
                    }),
            ]);
        yield return new ReportTable(
            "People, at the pace of the target", ["Crew", "Working", "Carrying and walking", "Washing", "Waiting", "On foot"],
            [
                .. paced.People.Select(p => new[]
                {
                    paced.Line.Crews[p.Crew].Name, Share(p.Working + p.Emptying, paced.End), Share(p.Carrying + p.Walking, paced.End),
                    Share(p.Washing, paced.End), Share(p.Waiting, paced.End),
                    QuantityText.Distance(1000 * p.Metres, facts.Plan.Units),
                }),
            ]);
        yield return new ReportTable(
            "Stores", ["Store", "Comes in", "Holds", "Full after"],
            [
                .. DayStore.Of(facts.Plan, day).Select(s => new[]
                {
                    s.Id, QuantityText.Plain(s.Items), s.Holds is { } holds ? QuantityText.Coarse(holds) : "not said",
                    s.FullAt is { } at ? After(at) : "-",
                }),
            ]);
    }

    private static IEnumerable<IReadOnlyList<string>> Hours(DayFrame frame)
    {
        if (frame.StartUp > 0)
        {
            yield return ["start-up", After(frame.StartUp)];
        }

        yield return ["work", After(frame.HandsEnd)];
        yield return ["wash-down" + (frame.IsWashDownSaid ? "" : ", estimated"), After(frame.WashDown)];
        yield return ["the crew is there", After(frame.CrewTime)];
        yield return ["the last item is done after", After(frame.LastOut)];
    }

    private static string After(long ticks) => QuantityText.Time(Ticks.Seconds(ticks));

    private static string Share(double part, double all)
        => all > 0 ? QuantityText.Of(part / all, Measure.Ratio, UnitSystem.Metric) : "-";
}
