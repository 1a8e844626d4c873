using Floorplan.Sizing.Simulation.Charts;
using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Motion;

/// <summary>A person through the day.</summary>
/// <param name="Name">Such as <c>evis 2</c>.</param>
public sealed record MovingPerson(string Crew, string Name, MotionTrack Track);

/// <summary>A load on its way, or what carried it on its way back.</summary>
/// <param name="Items">None on the way back.</param>
/// <param name="IsCarrier">On a trolley or in a tub; else one item.</param>
public sealed record MovingLoad(int Items, bool IsCarrier, long From, long Until, MotionTrack Track);

/// <summary>How many items are at a step, each time that it changes.</summary>
public sealed record StepTrack(int Step, IReadOnlyList<(long At, int InPlaces, int Waiting)> Counts)
{
    public (int InPlaces, int Waiting) At(long at)
    {
        var last = Counts.LastOrDefault(c => c.At <= at);
        return (last.InPlaces, last.Waiting);
    }
}

/// <summary>The run of a day at the pace of the target, as a moving picture shows it.</summary>
/// <param name="Outs">When each item is out.</param>
public sealed record DayMotion(
    long End, IReadOnlyList<MovingPerson> People, IReadOnlyList<MovingLoad> Loads, IReadOnlyList<StepTrack> Steps,
    IReadOnlyList<long> Outs, MoveRoutes Routes)
{
    /// <summary>Null where the day cannot be run.</summary>
    public static DayMotion? Of(PlanFacts facts)
    {
        if (facts.RecordedDay is not { } day)
        {
            return null;
        }

        var (outcome, record) = day;
        var line = outcome.Line;
        var routes = MoveRoutes.Of(facts, line);
        var tracks = new PersonTracks(line, routes);
        var spans = record.People.ToLookup(s => s.Person);
        return new DayMotion(
            outcome.End,
            [.. outcome.People.Index().Select(p => Person(outcome, p.Index, tracks.Of(p.Item.Crew, spans[p.Index])))],
            [.. record.Trips.Select(t => tracks.Load(t)), .. record.People.Where(s => s.Does == PersonDoes.BringBack).Select(tracks.Empty)],
            [.. record.Steps.GroupBy(c => c.Step).OrderBy(g => g.Key).Select(g => Counts(line, g.Key, g))], outcome.Outs, routes);
    }

    private static MovingPerson Person(LineOutcome outcome, int index, MotionTrack track)
    {
        int crew = outcome.People[index].Crew;
        int number = outcome.People.Take(index + 1).Count(p => p.Crew == crew);
        string name = outcome.Line.Crews[crew].Name;
        return new MovingPerson(name, FormattableString.Invariant($"{name} {number}"), track);
    }

    private static StepTrack Counts(ProductLine line, int step, IEnumerable<StepCount> counts)
    {
        var track = new List<(long At, int InPlaces, int Waiting)> { (0, 0, 0) };
        foreach (var count in counts)
        {
            var now = (count.At, StepItems.InPlaces(line.Steps[step], count), count.Waiting);
            if (track[^1].At == count.At)
            {
                track[^1] = now;
            }
            else
            {
                track.Add(now);
            }
        }

        return new StepTrack(step, track);
    }
}
