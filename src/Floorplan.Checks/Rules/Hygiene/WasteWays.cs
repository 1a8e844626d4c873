using Floorplan.Model;
using Floorplan.Model.Flows;
using Floorplan.Model.Services;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Checks.Rules.Hygiene;

/// <summary>Where waste goes from each place: by the waste flows, and by what stations throw into bins.</summary>
internal sealed class WasteWays
{
    private readonly Dictionary<string, HashSet<string>> next = [];
    private readonly ILookup<string, string> back;
    private readonly HashSet<string> breaks;

    public WasteWays(Plan plan)
    {
        var away = new HashSet<string>();
        foreach (var leg in plan.Flows.Where(f => f.Stream == Stream.Waste).SelectMany(f => f.Legs))
        {
            Add(leg.From.Name, leg.To.Name);
            if (IsAway(leg.To))
            {
                away.Add(leg.To.Name);
            }
        }

        foreach (var station in plan.Stations)
        {
            foreach (var waste in station.Wastes)
            {
                Add(station.Id, waste.BinId);
            }
        }

        back = next.SelectMany(n => n.Value.Select(to => (To: to, From: n.Key))).ToLookup(p => p.To, p => p.From);
        breaks = FindBreaks(plan.Stations.Select(s => s.Id).ToHashSet(), ReachedFrom(away));
    }

    /// <summary>Whether waste comes to a place, or arises there, and goes no farther.</summary>
    public bool BreaksOffAt(string id) => breaks.Contains(id);

    /// <summary>Whether waste goes directly from one place to another.</summary>
    public bool Leads(string from, string to) => next.TryGetValue(from, out var targets) && targets.Contains(to);

    // The last place of a broken chain stands for the whole chain; of a circle, its first station in the file.
    private HashSet<string> FindBreaks(HashSet<string> stations, HashSet<string> away)
    {
        var ends = stations.Where(s => !away.Contains(s) && back.Contains(s) && !next.ContainsKey(s));
        var ownEnds = stations.Where(s => !away.Contains(s) && next.TryGetValue(s, out var targets) && !targets.Any(stations.Contains));
        var found = ends.Concat(ownEnds).ToHashSet();
        var explained = ReachedFrom(found);
        foreach (string station in stations.Where(s => next.ContainsKey(s) && !away.Contains(s)))
        {
            if (!explained.Contains(station))
            {
                found.Add(station);
                explained.UnionWith(ReachedFrom([station]));
                explained.UnionWith(next[station]);
            }
        }

        return found;
    }

    /// <summary>All places from which waste comes to one of <paramref name="ends"/>, these included.</summary>
    private HashSet<string> ReachedFrom(IEnumerable<string> ends)
    {
        var reached = new HashSet<string>(ends);
        var queue = new Queue<string>(reached);
        while (queue.TryDequeue(out string? here))
        {
            foreach (string before in back[here].Where(reached.Add))
            {
                queue.Enqueue(before);
            }
        }

        return reached;
    }

    private static bool IsAway(Stop stop) => stop switch
    {
        OutsideStop => true,
        ServiceStop s => s.Service.Kind == ServiceKind.Drain,
        OpeningStop o => o.Opening.RoomA is null || o.Opening.RoomB is null,
        _ => false,
    };

    private void Add(string from, string? to)
    {
        if (!next.TryGetValue(from, out var targets))
        {
            next[from] = targets = [];
        }

        if (to is not null)
        {
            targets.Add(to);
        }
    }
}
