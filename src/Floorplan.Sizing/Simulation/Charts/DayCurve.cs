namespace Floorplan.Sizing.Simulation.Charts;

/// <summary>How much is at a place through the day. A value holds until the next.</summary>
/// <param name="Of">Id of the store, tank, rack or bin.</param>
/// <param name="Unit">Of the values: the word for the items, or <see cref="Kilograms"/>.</param>
/// <param name="Holds">Null where the plan does not say.</param>
/// <param name="FullAt">When it first could take no more, in ticks; null when it never was full.</param>
/// <param name="Points">In the order of time, the first at 0.</param>
public sealed record DayCurve(
    DayCurveKind Kind, string Of, string Unit, double? Holds, long? FullAt, IReadOnlyList<(long At, double Value)> Points)
{
    public const string Kilograms = "kg";

    public double Last => Points[^1].Value;

    public double Most => Points.Max(p => p.Value);

    /// <summary>
    /// The same with few points: of each stretch of time the highest value, for what is asked is whether there is room, and at the end
    /// what is there then.
    /// </summary>
    internal static IReadOnlyList<(long At, double Value)> Few(IReadOnlyList<(long At, double Value)> all, long end, int most)
    {
        if (all.Count <= most)
        {
            return all;
        }

        long stretch = Math.Max(1, (end + most - 1) / most);
        var few = new List<(long At, double Value)>(most + 1);
        double before = 0;
        foreach (var group in all.GroupBy(p => p.At / stretch))
        {
            // What was there when the stretch began counts, unless it changed at that very moment.
            double highest = group.Max(p => p.Value);
            long at = group.Key * stretch;
            few.Add((at, group.First().At > at ? Math.Max(before, highest) : highest));
            before = group.Last().Value;
        }

        few.Add((Math.Max(all[^1].At, few[^1].At), all[^1].Value));
        return few;
    }
}

/// <summary>What a curve is of.</summary>
public enum DayCurveKind
{
    /// <summary>At the end of the line: it keeps what comes.</summary>
    Store,

    /// <summary>Places of a tank, a rack or a rail within the line.</summary>
    Places,

    /// <summary>Items that wait in front of a station.</summary>
    Queue,

    Bin,
}
