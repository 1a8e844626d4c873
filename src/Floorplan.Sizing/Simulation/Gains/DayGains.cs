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
    /// <summary>What helps most once the best change is made: the next thing that holds the line up. Null where nothing does.</summary>
    public DayGain? Next { get; private init; }

    /// <summary>What holds the line up first, by name; empty where nothing that is changed helps.</summary>
    public string Limit => NamesOf(Single.Concat(Pairs).FirstOrDefault());

    /// <summary>The same for <see cref="Next"/>.</summary>
    public string NextLimit => NamesOf(Next);

    private static string NamesOf(DayGain? gain) => gain is null ? "" : string.Join(" and ", gain.Changes.Select(c => c.Of).Distinct());

    /// <summary>Less is none: half a percent.</summary>
    private const double Least = 1.005;

    /// <summary>A line that needs more changes than these is another line; own choice.</summary>
    private const int MostSteps = 12;

    /// <summary>
    /// So much is run at most for one question (<see cref="ProductLine.Weight"/>); of a longer line the busiest parts only. Own choice.
    /// </summary>
    private const long MostWeight = 10_000_000;

    /// <summary>The same for what a check asks.</summary>
    private const long FewWeight = 1_000_000;

    /// <summary>The same for a sheet.</summary>
    internal const long SheetWeight = 300_000;

    /// <summary>So many changes are tried whatever they cost.</summary>
    private const int FewestChanges = 6;

    public static DayGains Of(PlannedDay day)
    {
        var planned = day.Planned;
        if (planned.Line is not { } paced)
        {
            return new DayGains(0, [], [], [], false);
        }

        var line = PlannedDay.Fast(paced);
        var single = Better(line, day.FlatOut!, inParallel: true);
        var pairs = single.Count > 0 ? [] : BetterPairs(line, day.FlatOut!);
        var steps = new List<DayGain>();
        double rate = day.Rate;
        double enough = PlannedDay.Enough * planned.TargetPerHour;
        var best = single.Concat(pairs).FirstOrDefault();
        var after = best is null ? null : With(line, best);
        var next = after?.Single.FirstOrDefault();
        while (best is not null && after is not null && rate < enough && steps.Count < MostSteps)
        {
            rate = best.Rate;
            steps.Add(best);
            if (rate < enough)
            {
                best = after.Single.FirstOrDefault() ?? BetterPairs(after.Line, after.Run).FirstOrDefault();
                after = best is null ? null : With(after.Line, best);
            }
        }

        return new DayGains(day.Rate, single, pairs, steps, rate >= enough)
        {
            Next = next,
        };
    }

    /// <summary>A line with a gain made, and what helps it further.</summary>
    private sealed record Changed(ProductLine Line, LineOutcome Run, IReadOnlyList<DayGain> Single);

    private static Changed With(ProductLine line, DayGain gain)
    {
        var made = gain.Changes.Aggregate(line, (l, c) => c.Make(l));
        var run = LineRun.Of(made);
        return new Changed(made, run, Better(made, run, inParallel: true));
    }

    /// <summary>What helps most by itself; null where no single change does. A part of <see cref="Of"/> that takes little time.</summary>
    public static DayGain? Best(PlannedDay day) => Few(day, FewWeight, inParallel: false).FirstOrDefault();

    /// <summary>What single changes of the busiest parts gain, best first: no more than a check or a sheet has time for.</summary>
    /// <remarks>
    /// Where times differ from piece to piece the lines are compared with the mean times, and the gains are those of the day's own pace.
    /// </remarks>
    internal static IReadOnlyList<DayGain> Few(PlannedDay day, long most, bool inParallel)
    {
        if (day.Planned.Line is not { } planned)
        {
            return [];
        }

        var line = PlannedDay.Fast(planned).WithoutSpread();
        var run = planned.HasSpread ? LineRun.Of(line) : day.FlatOut!;
        double scale = planned.HasSpread ? day.Rate / Math.Max(double.Epsilon, run.SteadyRate) : 1;
        return [.. Better(line, run, inParallel, most).Select(g => g with { Rate = g.Rate * scale })];
    }

    /// <param name="run">Of the line as it is.</param>
    /// <param name="inParallel">Not in a check, whose work is counted by thread.</param>
    private static IReadOnlyList<DayGain> Better(ProductLine line, LineOutcome run, bool inParallel, long most = MostWeight)
    {
        var changes = Busiest(line, run, most);
        return Run(line, run, [.. changes.Select(c => (IReadOnlyList<DayChange>)[c])], inParallel);
    }

    private static IReadOnlyList<DayGain> BetterPairs(ProductLine line, LineOutcome run)
    {
        // As many as make no more pairs than single changes would be tried.
        long tried = Math.Max(1, MostWeight / Math.Max(1, line.Weight));
        var all = Busiest(line, run, line.Weight * (long)Math.Sqrt(2 * tried));
        return Run(line, run, [.. all.SelectMany((a, i) => all.Skip(i + 1).Select(b => (IReadOnlyList<DayChange>)[a, b]))], true);
    }

    /// <summary>As many changes as may be tried, of what is busiest; in the order of the line.</summary>
    private static IReadOnlyList<DayChange> Busiest(ProductLine line, LineOutcome run, long most)
    {
        var all = DayChange.All(line).Index().ToList();
        var busy = line.Steps.Index().GroupBy(s => s.Item.Name)
            .ToDictionary(g => g.Key, g => g.Max(s => run.Steps[s.Index].GoingTime / s.Item.Places), StringComparer.Ordinal);
        foreach (var (c, crew) in line.Crews.Index())
        {
            double worked = run.People.Where(p => p.Crew == c).Sum(p => (double)(run.End - p.Waiting)) / Math.Max(1, crew.People);
            busy[crew.Name] = Math.Max(worked, busy.GetValueOrDefault(crew.Name));
        }

        int count = (int)Math.Clamp(most / Math.Max(1, line.Weight), FewestChanges, int.MaxValue);
        return
        [
            .. all.OrderByDescending(c => busy.GetValueOrDefault(c.Item.Of)).Take(count).OrderBy(c => c.Index).Select(c => c.Item),
        ];
    }

    private static IReadOnlyList<DayGain> Run(
        ProductLine line, LineOutcome run, IReadOnlyList<IReadOnlyList<DayChange>> changes, bool inParallel)
    {
        double now = LinePace.Of(line, run).PerHour;
        var gains = inParallel ? changes.AsParallel().AsOrdered().Select(With) : changes.Select(With);

        // Of two that gain alike the one that asks for less is told first: people and places before machines, in the order made.
        return [.. gains.Where(g => g.Rate > now * Least).ToList().OrderByDescending(g => Math.Round(g.Rate, 3))];

        DayGain With(IReadOnlyList<DayChange> made) => new(made, LinePace.Of(made.Aggregate(line, (l, c) => c.Make(l))).PerHour);
    }
}
