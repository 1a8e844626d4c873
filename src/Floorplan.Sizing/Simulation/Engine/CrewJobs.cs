using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Engine;

/// <summary>What a crew may do, from the end of the line to its start.</summary>
internal sealed class CrewJobs
{
    public CrewJobs(ProductLine line, int crew, int[] depth)
    {
        var starts = Enumerable.Range(0, line.Steps.Count)
            .Where(s => line.ByProduct(p => line.StepsOf(p)[s]).Any(x => x.Crew == crew && x.Work.Mean > 0))
            .Select(s => (Job: new CrewJob(s, -1), Depth: 2 * depth[s]));
        var trips = Enumerable.Range(0, line.Moves.Count).Where(m => line.Moves[m].Crew == crew)
            .Select(m => (Job: new CrewJob(line.Moves[m].From, m), Depth: (2 * depth[line.Moves[m].From]) - 1));
        Jobs = [.. starts.Concat(trips).OrderBy(j => j.Depth).Select(j => j.Job)];
        Helps = [.. line.Crews[crew].Helps];
        Helpers = [.. Enumerable.Range(0, line.Crews.Count).Where(c => line.Crews[c].Helps.Contains(crew))];
        Bins = [.. Enumerable.Range(0, line.Bins.Count).Where(b => line.Bins[b].Crew == crew)];
    }

    /// <summary>The first that can be done is done first.</summary>
    public CrewJob[] Jobs { get; }

    public int[] Bins { get; }

    /// <summary>Crews that are helped.</summary>
    public int[] Helps { get; }

    /// <summary>Crews that help here.</summary>
    public int[] Helpers { get; }

    /// <summary>Indices of its people.</summary>
    public List<int> People { get; } = [];

    /// <summary>Something changed that may give somebody work.</summary>
    public bool MayStart { get; set; }

    /// <summary>Where each begins the day: spread over the places of work.</summary>
    public int PlaceOf(int person) => Jobs.Length == 0 ? 0 : Jobs[person % Jobs.Length].Step;
}

/// <param name="Step">Where it begins.</param>
/// <param name="Move">Index of the move, or -1 for work at the step.</param>
internal readonly record struct CrewJob(int Step, int Move);
