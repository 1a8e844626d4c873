using QuikGraph;
using QuikGraph.Algorithms;

namespace Floorplan.Model.Graphs;

/// <summary>
/// Places and the ways between them, such as rooms and their openings: the one structure that is searched for ways in, ways out, joined
/// rooms and ways of waste. Each search takes time in proportion to the places and ways that it comes to.
/// </summary>
public sealed class WayGraph
{
    private readonly BidirectionalGraph<string, Link> graph = new();

    /// <param name="places">In the order in which groups are told.</param>
    /// <param name="ways">Of ways of equal length the first is taken. Their ends become places too.</param>
    public WayGraph(IEnumerable<string> places, IEnumerable<Link> ways)
    {
        graph.AddVertexRange(places);
        graph.AddVerticesAndEdgeRange(ways);
    }

    public bool Has(string place) => graph.ContainsVertex(place);

    /// <summary>All ways that start at a place; none when it is unknown.</summary>
    public IEnumerable<Link> From(string place) => graph.TryGetOutEdges(place, out var ways) ? ways : [];

    /// <summary>All ways that end at a place; none when it is unknown.</summary>
    public IEnumerable<Link> To(string place) => graph.TryGetInEdges(place, out var ways) ? ways : [];

    /// <summary>For each place that can be reached, the places that the way with the fewest steps passes, both ends included.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<string>> Fewest(string from)
    {
        var ways = new Dictionary<string, IReadOnlyList<string>> { [from] = [from] };
        foreach (var step in BreadthFirst.Steps([from], place => From(place).Select(w => w.Target)))
        {
            ways[step.To] = [.. ways[step.From], step.To];
        }

        return ways;
    }

    /// <summary>
    /// All places from which a way leads to one of the ends, these included. Looks at nothing else, so that asking often is cheap.
    /// </summary>
    public IReadOnlySet<string> LeadingTo(IEnumerable<string> ends)
    {
        var reached = new HashSet<string>(ends);
        reached.UnionWith(BreadthFirst.Steps([.. reached], place => To(place).Select(w => w.Source)).Select(step => step.To));
        return reached;
    }

    /// <summary>Groups of places that ways join in either direction, in the order of their first places.</summary>
    public IEnumerable<IReadOnlyList<string>> Groups()
    {
        var numbers = new Dictionary<string, int>();
        graph.WeaklyConnectedComponents(numbers);
        return graph.Vertices.GroupBy(place => numbers[place]).Select(group => (IReadOnlyList<string>)[.. group]);
    }
}
