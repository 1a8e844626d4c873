using Google.OrTools.Sat;

namespace Floorplan.Arrange.Balancing;

/// <summary>
/// The simple assembly line balancing problem of the first kind (SALBP-1, Baybars 1986): the fewest places for a given cycle. A greedy
/// way gives a bound from above; where it is not the bound from below, an integer program finds the fewest and proves it.
/// </summary>
public static class LineBalancer
{
    /// <summary>Work that the solver may spend, in its own repeatable measure and not in seconds; own choice.</summary>
    private const double MostWork = 20;

    /// <summary>Tasks times places: more are not given to the solver; own bound.</summary>
    private const int MostVariables = 20_000;

    /// <param name="times">Of each task, none longer than the cycle.</param>
    /// <param name="order">Pairs of tasks of which the first comes before the second or at the same place; without rounds.</param>
    public static BalancedLine Balance(IReadOnlyList<long> times, IReadOnlyList<(int Before, int After)> order, long cycle)
    {
        if (times.Any(t => t < 0 || t > cycle))
        {
            throw new ArgumentOutOfRangeException(nameof(times), "a task is longer than the cycle, or shorter than nothing");
        }

        int[] greedy = Greedy(times, order, cycle);
        int most = greedy.DefaultIfEmpty(-1).Max() + 1;
        int least = LeastPlaces(times, cycle);
        return most == least || (long)times.Count * most > MostVariables
            ? new BalancedLine(greedy, most, least)
            : Solve(times, order, cycle, greedy, least);
    }

    /// <summary>All work end to end, and tasks over half a cycle, of which no two share a place.</summary>
    private static int LeastPlaces(IReadOnlyList<long> times, long cycle)
    {
        long sum = times.Sum();
        return (int)Math.Max((sum + cycle - 1) / cycle, times.Count(t => 2 * t > cycle));
    }

    /// <summary>The longest task that fits, of those whose forerunners are placed; a new place where none fits.</summary>
    private static int[] Greedy(IReadOnlyList<long> times, IReadOnlyList<(int Before, int After)> order, long cycle)
    {
        int[] placeOf = [.. Enumerable.Repeat(-1, times.Count)];
        var forerunners = order.ToLookup(o => o.After, o => o.Before);
        int place = 0;
        long left = cycle;
        for (int placed = 0; placed < times.Count;)
        {
            int next = Enumerable.Range(0, times.Count)
                .Where(t => placeOf[t] < 0 && times[t] <= left && forerunners[t].All(f => placeOf[f] >= 0))
                .OrderByDescending(t => times[t]).FirstOrDefault(-1);
            if (next < 0)
            {
                if (left == cycle)
                {
                    throw new ArgumentException("the order of the tasks goes round", nameof(order));
                }

                place++;
                left = cycle;
                continue;
            }

            placeOf[next] = place;
            left -= times[next];
            placed++;
        }

        return placeOf;
    }

    private static BalancedLine Solve(
        IReadOnlyList<long> times, IReadOnlyList<(int Before, int After)> order, long cycle, int[] greedy, int least)
    {
        int most = greedy.Max() + 1;
        var model = new CpModel();
        var at = times.Select((_, t) => Enumerable.Range(0, most).Select(p => model.NewBoolVar($"task {t} at {p}")).ToArray()).ToArray();
        var place = times.Select((_, t) => model.NewIntVar(0, most - 1, $"place of {t}")).ToArray();
        var last = model.NewIntVar(least - 1, most - 1, "last place");
        for (int t = 0; t < times.Count; t++)
        {
            model.AddExactlyOne(at[t]);
            model.Add(LinearExpr.WeightedSum(at[t], Enumerable.Range(0, most)) == place[t]);
            model.Add(place[t] <= last);
            model.AddHint(place[t], greedy[t]);
        }

        for (int p = 0; p < most; p++)
        {
            model.Add(LinearExpr.WeightedSum(at.Select(a => a[p]), times) <= cycle);
        }

        foreach (var (before, after) in order)
        {
            model.Add(place[before] <= place[after]);
        }

        model.Minimize(last);

        var solver = RepeatableSolver.Of(MostWork);
        return solver.Solve(model) is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? new BalancedLine(
                [.. place.Select(p => (int)solver.Value(p))], (int)solver.Value(last) + 1, (int)Math.Ceiling(solver.BestObjectiveBound) + 1)
            : new BalancedLine(greedy, most, least);
    }
}
