using Floorplan.Sizing.Simulation.Engine;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Plans;

namespace Floorplan.Sizing.Simulation.Gains;

/// <param name="Changes">Made together.</param>
/// <param name="Rate">Items an hour with them.</param>
public sealed record DayGain(IReadOnlyList<DayChange> Changes, double Rate)
{
    public string Text => string.Join(" and ", Changes.Select(c => c.Text));
}

/// <summary>What each change would gain, found by running the day with it.</summary>
/// <param name="Rate">Items an hour as the plan is.</param>
/// <param name="Single">Best first; only those that gain.</param>
/// <param name="Pairs">Where no single one gains: two at a time, best first.</param>
/// <param name="ToTarget">Steps that reach the target, each the best after those before it; empty where it is reached already.</param>
/// <param name="Reaches">Whether they do.</param>
public sealed record DayGains(
    double Rate, IReadOnlyList<DayGain> Single, IReadOnlyList<DayGain> Pairs, IReadOnlyList<DayGain> ToTarget, bool Reaches)
{
    /// <summary>Less is none: half a percent.</summary>
    private const double Least = 1.005;

    /// <summary>A line that needs more changes than these is another line; own choice.</summary>
    private const int MostSteps = 12;

    /// <summary>So many events are run at most for one question; a longer day is then run for fewer items. Own choice.</summary>
    private const long MostEvents = 40_000_000;

    /// <summary>Fewer items than these say nothing of a line that runs.</summary>
    private const int FewestItems = 300;

    public static DayGains Of(PlannedDay day)
    {
        var planned = day.Planned;
        if (planned.Line is not { } paced)
        {
            return new DayGains(0, [], [], [], false);
        }

        var line = PlannedDay.Fast(paced);
        long events = day.FlatOut!.Events;
        var single = Better(line, day.Rate, events);
        var pairs = single.Count > 0 ? [] : BetterPairs(line, day.Rate, events);
        var steps = new List<DayGain>();
        double rate = day.Rate;
        var best = single.Concat(pairs).FirstOrDefault();
        while (rate < PlannedDay.Enough * planned.TargetPerHour && steps.Count < MostSteps && best is not null)
        {
            line = best.Changes.Aggregate(line, (l, c) => c.Make(l));
            rate = best.Rate;
            steps.Add(best);
            var next = Better(line, rate, events);
            best = next.Count > 0 ? next[0] : BetterPairs(line, rate, events).FirstOrDefault();
        }

        return new DayGains(day.Rate, single, pairs, steps, rate >= PlannedDay.Enough * planned.TargetPerHour);
    }

    /// <summary>What helps most by itself; null where no single change does. A part of <see cref="Of"/> that takes little time.</summary>
    public static DayGain? Best(PlannedDay day)
        => day.Planned.Line is { } line ? Better(PlannedDay.Fast(line), day.Rate, day.FlatOut!.Events).FirstOrDefault() : null;

    private static IReadOnlyList<DayGain> Better(ProductLine line, double rate, long events)
        => Run(line, rate, events, [.. DayChange.All(line).Select(c => (IReadOnlyList<DayChange>)[c])]);

    private static IReadOnlyList<DayGain> BetterPairs(ProductLine line, double rate, long events)
    {
        var all = DayChange.All(line).ToList();
        return Run(line, rate, events, [.. all.SelectMany((a, i) => all.Skip(i + 1).Select(b => (IReadOnlyList<DayChange>)[a, b]))]);
    }

    private static IReadOnlyList<DayGain> Run(
        ProductLine line, double rate, long events, IReadOnlyList<IReadOnlyList<DayChange>> changes)
    {
        double share = MostEvents / (double)Math.Max(1, events * changes.Count);
        int items = share >= 1 ? line.Supply.Items : Math.Max(FewestItems, (int)(share * line.Supply.Items));
        var run = line with { Supply = line.Supply with { Items = Math.Min(items, line.Supply.Items) } };
        double now = run.Supply.Items < line.Supply.Items ? LineRun.Of(run).SteadyRate : rate;
        return
        [
            .. changes.AsParallel().AsOrdered()
                .Select(c => new DayGain(c, LineRun.Of(c.Aggregate(run, (l, one) => one.Make(l))).SteadyRate))
                .Where(g => g.Rate > now * Least)

                // Of two that gain alike the one that asks for less is told first: people and places before machines, in the order made.
                .OrderByDescending(g => Math.Round(g.Rate, 3)),
        ];
    }
}
