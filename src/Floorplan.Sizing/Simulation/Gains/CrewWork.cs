using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Plans;

namespace Floorplan.Sizing.Simulation.Gains;

/// <summary>What a crew does for one item, on average; of several products the one whose target is the hardest to make.</summary>
/// <param name="Name">Of the crew.</param>
/// <param name="People">As the plan counts them.</param>
/// <param name="Tasks">In the order of the line.</param>
public sealed record CrewWork(string Name, int People, IReadOnlyList<HandTask> Tasks)
{
    /// <summary>Ticks an item, all tasks together: the work content.</summary>
    public long Content => Tasks.Sum(t => t.Each);

    /// <summary>Ticks from one item to the next at the pace of the target: the takt.</summary>
    public static long Takt(PlannedDay day) => (long)Math.Floor(Ticks.Hour / day.Planned.TargetPerHour);

    /// <summary>By crew; none where the day cannot be run.</summary>
    public static IReadOnlyList<CrewWork> Of(PlannedDay day)
    {
        if (day.FlatOut is not { } run)
        {
            return [];
        }

        var line = run.Line;
        return [.. line.Crews.Select((c, i) => new CrewWork(c.Name, c.People, TasksOf(run, i)))];
    }

    /// <summary>Work at steps, and loads carried from them, each spread over all items of the day.</summary>
    private static IReadOnlyList<HandTask> TasksOf(LineOutcome run, int crew)
    {
        var line = run.Line;
        int items = Math.Max(1, line.Supply.Items);
        var tasks = new List<HandTask>();
        for (int s = 0; s < line.Steps.Count; s++)
        {
            var step = line.Steps[s];
            if (step.Crew == crew && step.Work.Mean > 0)
            {
                double each = (step.Work.Mean * (1 + step.Rework)) + (step.PauseEvery > 0 ? step.Pause / (double)step.PauseEvery : 0);
                tasks.Add(new HandTask($"work at {step.Title}", (long)(each * run.Steps[s].Items / items)));
            }

            foreach (var (m, move) in line.Moves.Index().Where(x => x.Item.IsTaken && x.Item.From == s && x.Item.Crew == crew))
            {
                long trip = move.There + (move.Load > 1 ? move.Back : 0);
                tasks.Add(new HandTask(
                    $"carry from {step.Title} to {line.Steps[move.To].Title}", (long)((double)trip * run.Moves[m].Trips / items)));
            }
        }

        return tasks;
    }
}

/// <param name="Each">Ticks an item.</param>
public sealed record HandTask(string Name, long Each);
