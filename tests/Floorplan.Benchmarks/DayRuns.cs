using System.Diagnostics;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Plans;

namespace Floorplan.Benchmarks;

/// <summary>The day's simulation alone: a line of so many stations with a person at each, and how its time grows with items.</summary>
internal static class DayRuns
{
    private const int Rounds = 15;

    public static void Run()
    {
        var table = new Table("stations", "items", "events", "ms, median", "fastest", "ns an event");
        foreach (var (stations, items) in ((int, int)[])[(15, 1_000), (15, 10_000), (15, 100_000), (200, 1_000), (200, 10_000)])
        {
            var line = Line(stations, items);
            var times = new List<double>();
            long events = 0;
            for (int i = 0; i < Rounds; i++)
            {
                long start = Stopwatch.GetTimestamp();
                events = PlannedDay.Run(line).Events;
                times.Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
            }

            times.Sort();
            table.Add(
                Table.Text(stations), Table.Text(items), Table.Text(events), Table.Text(times[Rounds / 2]), Table.Text(times[0]),
                Table.Text(times[0] * 1e6 / events));
        }

        table.Print();
    }

    /// <summary>The same line as <c>day-line.py</c> in README runs: work of 20 to 34 s, one place and room for two at each.</summary>
    private static ProductLine Line(int stations, int items) => new()
    {
        Supply = new LineSupply(items, TaskTime.OfSeconds(35)),
        Steps =
        [
            new LineStep { Name = "outside", Places = LineStep.Unlimited },
            .. Enumerable.Range(0, stations).Select(
                i => new LineStep { Name = $"s{i}", Waits = 2, Crew = i, Work = TaskTime.OfSeconds(20 + (i * 7 % 15)) }),
        ],
        Moves = [.. Enumerable.Range(0, stations).Select(i => new LineMove(i, i + 1))],
        Crews = [.. Enumerable.Range(0, stations).Select(i => new LineCrew($"s{i}", 1))],
    };
}
