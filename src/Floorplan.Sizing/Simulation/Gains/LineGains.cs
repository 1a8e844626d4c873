using Floorplan.Sizing.Simulation.Engine;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Plans;

namespace Floorplan.Sizing.Simulation.Gains;

/// <param name="Changes">Made together.</param>
/// <param name="Rate">Items an hour with them.</param>
public sealed record LineGain(IReadOnlyList<LineChange> Changes, double Rate)
{
    public string Text => string.Join(" and ", Changes.Select(c => c.Text));
}

/// <summary>What each change would gain, found by running the day with it.</summary>
/// <param name="Rate">Items an hour as the plan is.</param>
/// <param name="Single">Best first; only those that gain.</param>
/// <param name="Pairs">Where no single one gains: two at a time, best first.</param>
/// <param name="ToTarget">Steps that reach the target, each the best after those before it; empty where it is reached already.</param>
/// <param name="Reaches">Whether they do.</param>
public sealed record LineGains(
    double Rate, IReadOnlyList<LineGain> Single, IReadOnlyList<LineGain> Pairs, IReadOnlyList<LineGain> ToTarget, bool Reaches)
{
    /// <summary>Less is none: half a percent.</summary>
    private const double Least = 1.005;

    /// <summary>A line that needs more changes than these is another line; own choice.</summary>
    private const int MostSteps = 12;

    public static LineGains Of(PlannedDay day)
    {
        var planned = day.Planned;
        if (planned.Line is not { } paced)
        {
            return new LineGains(0, [], [], [], false);
        }

        var line = PlannedDay.Fast(paced);
        var single = Better(line, day.Rate);
        var pairs = single.Count > 0 ? [] : BetterPairs(line, day.Rate);
        var steps = new List<LineGain>();
        double rate = day.Rate;
        var best = single.Concat(pairs).FirstOrDefault();
        while (rate < 0.995 * planned.TargetPerHour && steps.Count < MostSteps && best is not null)
        {
            line = best.Changes.Aggregate(line, (l, c) => c.Make(l));
            rate = best.Rate;
            steps.Add(best);
            var next = Better(line, rate);
            best = next.Count > 0 ? next[0] : BetterPairs(line, rate).FirstOrDefault();
        }

        return new LineGains(day.Rate, single, pairs, steps, rate >= 0.995 * planned.TargetPerHour);
    }

    private static IReadOnlyList<LineGain> Better(ProductLine line, double rate)
        => Run(line, rate, LineChange.All(line).Select(c => (IReadOnlyList<LineChange>)[c]));

    private static IReadOnlyList<LineGain> BetterPairs(ProductLine line, double rate)
    {
        var all = LineChange.All(line).ToList();
        return Run(line, rate, all.SelectMany((a, i) => all.Skip(i + 1).Select(b => (IReadOnlyList<LineChange>)[a, b])));
    }

    private static IReadOnlyList<LineGain> Run(ProductLine line, double rate, IEnumerable<IReadOnlyList<LineChange>> changes) =>
    [
        .. changes.AsParallel().AsOrdered()
            .Select(c => new LineGain(c, LineRun.Of(c.Aggregate(line, (l, one) => one.Make(l))).SteadyRate))
            .Where(g => g.Rate > rate * Least)

            // Of two that gain alike the one that asks for less is told first: people and places before machines, in the order made.
            .OrderByDescending(g => Math.Round(g.Rate, 3)),
    ];
}
