using Floorplan.Checks.Framework;
using Floorplan.Model;
using Floorplan.Model.Flows;
using Floorplan.Model.Graphs;
using Floorplan.Model.Services;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Checks.Rules.Hygiene;

/// <summary>Where waste goes from each place: by the waste flows, and by what stations throw into bins.</summary>
internal sealed class WasteWays
{
    private readonly WayGraph graph;
    private readonly HashSet<string> sources;
    private readonly HashSet<string> breaks;

    public WasteWays(Plan plan)
    {
        var legs = plan.Flows.Where(f => f.Stream == Stream.Waste).SelectMany(f => f.Legs).ToList();
        var thrown = plan.Stations.SelectMany(s => s.Wastes.Select(w => (From: s.Id, To: w.BinId))).ToList();
        graph = new WayGraph([], legs.Select(l => new Link(l.From.Name, l.To.Name))
            .Concat(thrown.Where(t => t.To is not null).Select(t => new Link(t.From, t.To!))));
        sources = [.. legs.Select(l => l.From.Name), .. thrown.Select(t => t.From)];
        breaks =
            FindBreaks(
                plan.Stations.Select(s => s.Id).ToHashSet(), graph.LeadingTo(legs.Select(l => l.To).Where(IsAway).Select(t => t.Name)));
    }

    /// <summary>Whether waste comes to a place, or arises there, and goes no farther.</summary>
    public bool BreaksOffAt(string id) => breaks.Contains(id);

    /// <summary>Whether waste goes directly from one place to another.</summary>
    public bool Leads(string from, string to) => graph.From(from).Any(w => w.Target == to);

    // The last place of a broken chain stands for the whole chain; of a circle, its first station in the file.
    private HashSet<string> FindBreaks(HashSet<string> stations, IReadOnlySet<string> away)
    {
        var ends = stations.Where(s => !away.Contains(s) && graph.To(s).Any() && !sources.Contains(s));
        var ownEnds = stations.Where(s => !away.Contains(s) && sources.Contains(s) && !graph.From(s).Any(w => stations.Contains(w.Target)));
        var found = ends.Concat(ownEnds).ToHashSet();
        var explained = graph.LeadingTo(found).ToHashSet();
        foreach (string station in stations.Where(s => sources.Contains(s) && !away.Contains(s)))
        {
            // More than these are not told, and each takes a search.
            if (found.Count > Checker.MostOfOneRule)
            {
                break;
            }

            if (!explained.Contains(station))
            {
                found.Add(station);
                explained.UnionWith(graph.LeadingTo([station]));
                explained.UnionWith(graph.From(station).Select(w => w.Target));
            }
        }

        return found;
    }

    private static bool IsAway(Stop stop) => stop switch
    {
        OutsideStop => true,
        ServiceStop s => s.Service is Drain,
        OpeningStop o => o.Opening.RoomA is null || o.Opening.RoomB is null,
        _ => false,
    };
}
