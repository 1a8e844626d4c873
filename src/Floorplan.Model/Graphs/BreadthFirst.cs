namespace Floorplan.Model.Graphs;

/// <summary>The one search from place to place: nearest places first, each place once, and no farther than the caller asks.</summary>
public static class BreadthFirst
{
    /// <summary>Each step to a place not yet come to, as it is found: the first step to a place ends a way with the fewest steps.</summary>
    /// <param name="starts">Where to begin; no step leads to one of these.</param>
    /// <param name="next">Where one gets to from a place in one step.</param>
    public static IEnumerable<(T From, T To)> Steps<T>(IEnumerable<T> starts, Func<T, IEnumerable<T>> next)
    {
        var queue = new Queue<T>(starts);
        var seen = new HashSet<T>(queue);
        while (queue.TryDequeue(out var here))
        {
            foreach (var to in next(here))
            {
                if (seen.Add(to))
                {
                    queue.Enqueue(to);
                    yield return (here, to);
                }
            }
        }
    }
}
