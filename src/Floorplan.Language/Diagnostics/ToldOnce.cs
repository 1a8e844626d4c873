namespace Floorplan.Language.Diagnostics;

/// <summary>
/// One slip is told once: what follows from something else that is told goes, and what is told several times is told together.
/// </summary>
public static class ToldOnce
{
    /// <param name="all">All that was found, in the order in which it is to be told.</param>
    /// <param name="nameOf">Code or rule.</param>
    /// <param name="relations">What follows from what.</param>
    /// <param name="sameAs">The same for what is one thing told again; null for what stands alone.</param>
    /// <param name="together">One for several that are the same, in the order of <paramref name="all"/>.</param>
    public static IReadOnlyList<T> Keep<T>(
        IReadOnlyList<T> all, Func<T, string> nameOf, IReadOnlyList<FollowsFrom<T>> relations, Func<T, string?> sameAs,
        Func<IReadOnlyList<T>, T> together)
        where T : class
    {
        var told = all.Select(nameOf).ToHashSet(StringComparer.Ordinal);
        var dropped = new HashSet<T>(ReferenceEqualityComparer.Instance);
        foreach (var relation in relations.Where(r => told.Contains(r.What)))
        {
            var causes = all.Where(relation.IsCause).SelectMany(c => relation.CauseAt(c).Select(at => (At: at, Cause: c)))
                .ToLookup(p => p.At, p => p.Cause, StringComparer.Ordinal);
            dropped.UnionWith(
                all.Where(e => nameOf(e) == relation.What && relation.EffectAt(e).Any(at => causes[at].Any(c => Causes(relation, e, c)))));
        }

        return
        [
            .. all.Where(t => !dropped.Contains(t))
                .GroupBy(t => (object?)sameAs(t) ?? new object())
                .Select(g => g.ToList())
                .Select(same => same.Count == 1 ? same[0] : together(same)),
        ];
    }

    private static bool Causes<T>(FollowsFrom<T> relation, T effect, T cause)
        where T : class
        => !ReferenceEquals(effect, cause) && relation.When?.Invoke(effect, cause) != false;
}
