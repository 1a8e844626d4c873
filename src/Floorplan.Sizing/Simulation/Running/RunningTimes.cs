using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Running;

/// <summary>
/// When each station of the line is in use through the day: hands work at it, or something runs or stays in it. Water runs and motors
/// turn in that time; own assumption.
/// </summary>
/// <param name="End">When the last thing happened, in ticks from the start of work.</param>
/// <param name="Stretches">By the id of the station, in order of time; a station that is not on the line is not in it.</param>
public sealed record RunningTimes(long End, IReadOnlyDictionary<string, IReadOnlyList<(long From, long Until)>> Stretches)
{
    /// <summary>
    /// In place of a station: people who wash their hands, each for himself, so that stretches overlap. No thing of a plan has a blank in
    /// its id.
    /// </summary>
    public const string HandWash = "hand wash";

    /// <summary>Null where the day cannot be run.</summary>
    internal static RunningTimes? Of(PlanFacts facts)
    {
        if (facts.RecordedDay is not { } day)
        {
            return null;
        }

        var counts = day.Record.Steps.ToLookup(c => c.Step);
        var found = new Dictionary<string, List<(long From, long Until)>>(StringComparer.Ordinal);
        foreach (var (index, station) in facts.Day.Planned.Stations.Index().Where(s => s.Item is not null))
        {
            if (!found.TryGetValue(station!.Id, out var stretches))
            {
                found[station.Id] = stretches = [];
            }

            stretches.AddRange(Of(counts[index], day.Outcome.End));
        }

        var stretchesOf = found.ToDictionary(
            f => f.Key, IReadOnlyList<(long From, long Until)> (f) => Joined(f.Value), StringComparer.Ordinal);
        stretchesOf[HandWash] =
            [.. day.Record.People.Where(p => p.Does == PersonDoes.Wash).OrderBy(p => p.From).Select(p => (p.From, p.Until))];
        return new RunningTimes(day.Outcome.End, stretchesOf);
    }

    /// <summary>How long it is in use, in seconds; null where it is not on the line.</summary>
    public double? Seconds(string station)
        => Stretches.TryGetValue(station, out var found) ? found.Sum(s => Ticks.Seconds(s.Until - s.From)) : null;

    /// <summary>The most that stations take together at one moment, and when that is first so.</summary>
    /// <param name="amounts">By the id of the station; those that are not on the line are left out.</param>
    public (double Amount, long At) Peak(IReadOnlyDictionary<string, double> amounts)
    {
        var changes = new SortedDictionary<long, double>();
        foreach (var (id, amount) in amounts.OrderBy(a => a.Key, StringComparer.Ordinal))
        {
            foreach (var (from, until) in Stretches.GetValueOrDefault(id) ?? [])
            {
                changes[from] = changes.GetValueOrDefault(from) + amount;
                changes[until] = changes.GetValueOrDefault(until) - amount;
            }
        }

        double now = 0;
        var peak = (Amount: 0.0, At: 0L);
        foreach (var (at, change) in changes)
        {
            now += change;
            peak = now > peak.Amount * (1 + 1e-9) ? (now, at) : peak;
        }

        return peak;
    }

    /// <summary>The most that stations take together in one hour, in amounts times seconds, and when that hour begins.</summary>
    public (double Sum, long From) HighestHour(IReadOnlyDictionary<string, double> amounts)
    {
        // The sum over a window is highest where the window begins with a stretch or ends with one.
        var starts = amounts.Keys.SelectMany(id => Stretches.GetValueOrDefault(id) ?? [])
            .SelectMany(s => new[] { s.From, s.Until - Ticks.Hour }).Select(s => Math.Max(0, s)).Distinct().Order().ToList();
        int every = Math.Max(1, starts.Count / MostWindows);
        var best = (Sum: 0.0, From: 0L);
        for (int i = 0; i < starts.Count; i += every)
        {
            double sum = amounts.OrderBy(a => a.Key, StringComparer.Ordinal).Sum(a => a.Value * Within(a.Key, starts[i]));
            best = sum > best.Sum * (1 + 1e-9) ? (sum, starts[i]) : best;
        }

        return best;
    }

    /// <summary>A long day is looked at in so many hours only; own bound.</summary>
    private const int MostWindows = 200;

    private double Within(string id, long from) => (Stretches.GetValueOrDefault(id) ?? [])
        .Sum(s => Ticks.Seconds(Math.Max(0, Math.Min(s.Until, from + Ticks.Hour) - Math.Max(s.From, from))));

    private static IEnumerable<(long From, long Until)> Of(IEnumerable<StepCount> counts, long end)
    {
        long? since = null;
        foreach (var count in counts)
        {
            bool runs = count.Hands > 0 || count.Going > 0;
            if (runs && since is null)
            {
                since = count.At;
            }
            else if (!runs && since is { } from)
            {
                since = null;
                if (count.At > from)
                {
                    yield return (from, count.At);
                }
            }
        }

        if (since is { } last && end > last)
        {
            yield return (last, end);
        }
    }

    private static List<(long From, long Until)> Joined(List<(long From, long Until)> stretches)
    {
        var joined = new List<(long From, long Until)>();
        foreach (var stretch in stretches.OrderBy(s => s.From))
        {
            if (joined.Count > 0 && stretch.From <= joined[^1].Until)
            {
                joined[^1] = (joined[^1].From, Math.Max(joined[^1].Until, stretch.Until));
            }
            else
            {
                joined.Add(stretch);
            }
        }

        return joined;
    }
}
