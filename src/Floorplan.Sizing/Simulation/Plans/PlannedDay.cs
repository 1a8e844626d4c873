using Floorplan.Language.Quantities;
using Floorplan.Sizing.Simulation.Engine;
using Floorplan.Sizing.Simulation.Gains;
using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Plans;

/// <summary>The day of a plan: its line run at the pace of the target, and as fast as it can.</summary>
/// <param name="Paced">Items come at the pace of the target; null where something is missing.</param>
/// <param name="FlatOut">
/// As fast as it can, with items always there, of the product whose target is the hardest to make; null where something is missing.
/// </param>
public sealed record PlannedDay(PlannedLine Planned, LineOutcome? Paced, LineOutcome? FlatOut)
{
    /// <summary>One run of a line. The same line and seed give the same run.</summary>
    /// <param name="record">Where to write down what happens when; null where nobody asks.</param>
    public static LineOutcome Run(ProductLine line, int seed = 0, LineRecord? record = null) => LineRun.Of(line, seed, record);

    internal static PlannedDay Of(PlannedLine planned)
    {
        if (planned.Whole is not { } whole)
        {
            return new PlannedDay(planned, null, null);
        }

        List<LineOutcome> runs = [.. planned.Products.Select(p => LineRun.Of(Fast(p.Line)))];
        List<LinePace> paces = [.. runs.Select(r => LinePace.Of(r.Line, r))];
        var paced = LineRun.Of(whole);
        if ((paced.Locked ?? paces.Select(p => p.Locked).FirstOrDefault(l => l is not null)) is { } locked)
        {
            return new PlannedDay(planned.WithoutLine(LockOf(planned, whole, locked)), null, null);
        }

        int tightest = Enumerable.Range(0, paces.Count).MinBy(p => paces[p].PerHour / planned.Products[p].PerHour);
        return new PlannedDay(planned with { Tightest = tightest }, paced, runs[tightest])
        {
            Paces = paces,
        };
    }

    /// <summary>A line that locks itself cannot be run: that is told, with what to write.</summary>
    private static DayNeed LockOf(PlannedLine planned, ProductLine line, LineLock locked)
    {
        string names = string.Join(", ", locked.Steps.Select(s => line.Steps[s].Name).Distinct());
        int waits = Math.Max(locked.Items, line.Steps[locked.Wait].Waits + 1);
        string name = line.Steps[locked.Wait].Name;
        var span = planned.Stations[locked.Wait]?.Span;
        var near = planned.Stations.OfType<Model.Stations.Station>().FirstOrDefault();
        string at = QuantityText.Time(Ticks.Seconds(locked.At));
        return new DayNeed(
            span is null ? "day" : name,
            $"the line locks itself after {at}: each of {names} is full of what waits for the next",
            FormattableString.Invariant($"`waits {waits} {planned.Unit}` in station {name}, or let fewer come at a time"),
            span ?? near?.Span ?? default);
    }

    /// <summary>
    /// The same line with all its items there from the start. A tank that holds most of the day's items would still be filling at the end,
    /// so it runs on for as many fillings as show a steady pace.
    /// </summary>
    internal static ProductLine Fast(ProductLine line)
    {
        int largest = line.Steps.Where(s => s.Places != LineStep.Unlimited).Select(s => s.Places * s.Batch).DefaultIfEmpty(1).Max();
        long most = Math.Min(MostItems, MostWeight / Math.Max(1, line.Weight / Math.Max(1, line.Supply.Items)));
        int items = Math.Max(line.Supply.Items, (int)Math.Min((long)Fillings * largest, most));
        return line with
        {
            Supply = line.Supply with { Every = TaskTime.None, Items = items },
            Breaks = [],
            RestEvery = line.RestShare > 0 ? Math.Max(RestEvery, Shortest(line, items) / MostRests) : 0,
        };
    }

    /// <summary>Own choice.</summary>
    private const long RestEvery = 30 * Ticks.Minute;

    /// <summary>A run of months does not rest every half hour, or it would do little else; own choice.</summary>
    private const int MostRests = 200;

    /// <summary>No run is shorter: the busiest step or crew works all the time.</summary>
    private static long Shortest(ProductLine line, int items)
    {
        double step = line.Steps.Where(s => s.Places != LineStep.Unlimited)
            .Select(s => (((double)s.Work.Mean * s.Batch) + s.Stay.Mean) / ((double)s.Places * s.Batch)).DefaultIfEmpty(0).Max();
        double crew = line.Crews.Select((c, i) => line.Steps.Where(s => s.Crew == i).Sum(s => (double)s.Work.Mean) / Math.Max(1, c.People))
            .DefaultIfEmpty(0).Max();
        return (long)(items * Math.Max(step, crew));
    }

    /// <summary>Own choice.</summary>
    private const int Fillings = 8;
    private const int MostItems = 20_000;

    /// <summary>Of a line that is run (<see cref="ProductLine.Weight"/>), so that a run takes a fraction of a second; own bound.</summary>
    internal const long MostWeight = 500_000;

    /// <summary>Items an hour that the line can make of the product whose target is the hardest to make.</summary>
    public double Rate => Pace.PerHour;

    public LinePace Pace => Paces.Count > 0 ? Paces[Planned.Tightest] : default;

    /// <summary>Of each product alone.</summary>
    public IReadOnlyList<LinePace> Paces { get; private init; } = [];

    /// <summary>Runs are of whole items, so half a percent less than asked is enough.</summary>
    public const double Enough = 0.995;

    /// <summary>Whether the line makes what is asked.</summary>
    public bool KeepsUp => FlatOut is not null && Rate >= Enough * Planned.TargetPerHour;
}
