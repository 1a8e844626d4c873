using Floorplan.Sizing.Simulation.Plans;

namespace Floorplan.Sizing.Simulation.Gains;

/// <param name="Values">In the order of the figures.</param>
/// <param name="Rate">Items an hour with them.</param>
public sealed record GridRun(IReadOnlyList<int> Values, double Rate);

/// <summary>The pace of a line for every combination of figures.</summary>
public static class DayGrid
{
    /// <summary>More runs than these are asked for by mistake; own choice.</summary>
    public const int MostRuns = 5_000;

    /// <summary>So much is run at most (<see cref="Line.ProductLine.Weight"/>): about a minute; own choice.</summary>
    private const long MostWeight = 400_000_000;

    public static bool IsTooLarge(PlannedDay day, IReadOnlyList<VariedFigure> figures)
    {
        var largest = figures.Aggregate(PlannedDay.Fast(day.Planned.Line!), (l, f) => f.Make(l, f.To));
        long runs = 1;
        foreach (var figure in figures)
        {
            runs = Math.Min(runs * figure.Count, MostRuns + 1);
        }

        return runs > MostRuns || runs * largest.Weight > MostWeight;
    }

    /// <summary>Each run, to be made in any order; the last figure changes first.</summary>
    /// <param name="day">Of a plan that can be run.</param>
    public static IReadOnlyList<Func<GridRun>> Of(PlannedDay day, IReadOnlyList<VariedFigure> figures)
    {
        var line = PlannedDay.Fast(day.Planned.Line!);
        int count = figures.Aggregate(1, (all, f) => all * f.Count);
        return [.. Enumerable.Range(0, count).Select<int, Func<GridRun>>(n => () =>
        {
            int[] values = Values(figures, n);
            var varied = figures.Zip(values).Aggregate(line, (l, f) => f.First.Make(l, f.Second));
            return new GridRun(values, LinePace.Of(varied).PerHour);
        })];
    }

    private static int[] Values(IReadOnlyList<VariedFigure> figures, int number)
    {
        int[] values = new int[figures.Count];
        for (int i = figures.Count - 1; i >= 0; i--)
        {
            values[i] = figures[i].From + (number % figures[i].Count);
            number /= figures[i].Count;
        }

        return values;
    }
}
