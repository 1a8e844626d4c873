using Floorplan.Sizing.Simulation.Gains;
using Floorplan.Sizing.Simulation.Plans;

namespace Floorplan.Arrange.Balancing;

/// <summary>The fewest people of one crew whose work an item fits the takt, when each keeps to one stretch of the line.</summary>
/// <param name="Takt">Ticks from one item to the next.</param>
/// <param name="People">Enough, as the tasks are shared out.</param>
/// <param name="AtLeast">Proven: fewer cannot do it.</param>
public sealed record LeastCrew(CrewWork Work, long Takt, int People, int AtLeast)
{
    /// <summary>
    /// Work of an item that is longer than the takt is done by several side by side: so many do nothing else, and what is over is a task
    /// like others.
    /// </summary>
    public static IReadOnlyList<LeastCrew> Of(PlannedDay day)
    {
        var crews = CrewWork.Of(day);
        long takt = crews.Count == 0 ? 0 : CrewWork.Takt(day);
        return takt <= 0 ? [] : [.. crews.Select(c => Of(c, takt))];
    }

    private static LeastCrew Of(CrewWork work, long takt)
    {
        long sideBySide = work.Tasks.Sum(t => t.Each / takt);
        long[] rests = [.. work.Tasks.Select(t => t.Each % takt)];
        var line = LineBalancer.Balance(rests, [.. Enumerable.Range(1, Math.Max(0, rests.Length - 1)).Select(t => (t - 1, t))], takt);
        int alone = (int)Math.Min(int.MaxValue / 2, sideBySide);

        // Nothing over takes nobody.
        return rests.Sum() == 0
            ? new LeastCrew(work, takt, alone, alone)
            : new LeastCrew(work, takt, alone + line.Places, alone + line.AtLeast);
    }
}
