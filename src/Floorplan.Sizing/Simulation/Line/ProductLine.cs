namespace Floorplan.Sizing.Simulation.Line;

/// <summary>
/// A line with its people, as the simulation runs it. Step 0 is where items come from; steps without a way on are where they end.
/// </summary>
public sealed record ProductLine
{
    public required IReadOnlyList<LineStep> Steps { get; init; }

    public required IReadOnlyList<LineMove> Moves { get; init; }

    public IReadOnlyList<LineCrew> Crews { get; init; } = [];

    public IReadOnlyList<LineBin> Bins { get; init; } = [];

    public IReadOnlyList<LineBreak> Breaks { get; init; } = [];

    /// <summary>How much of the day all rest, 0 to below 1: said by the breaks of the plan.</summary>
    public double RestShare { get; init; }

    /// <summary>
    /// A short rest comes back so often, for its share of the time, in place of <see cref="Breaks"/>; 0 for none. A pace does not hang on
    /// where one long break falls in a run then.
    /// </summary>
    public long RestEvery { get; init; }

    public required LineSupply Supply { get; init; }

    /// <summary>Other products of the day after the first, in their order.</summary>
    public IReadOnlyList<LineLot> Later { get; init; } = [];

    public int Products => 1 + Later.Count;

    /// <summary>Of all products.</summary>
    public int Items => Supply.Items + Later.Sum(l => l.Supply.Items);

    public LineSupply SupplyOf(int product) => product == 0 ? Supply : Later[product - 1].Supply;

    public IReadOnlyList<LineStep> StepsOf(int product) => product == 0 ? Steps : Later[product - 1].Steps;

    public IReadOnlyList<LineMove> MovesOf(int product) => product == 0 ? Moves : Later[product - 1].Moves;

    public IEnumerable<T> ByProduct<T>(Func<int, T> what) => Enumerable.Range(0, Products).Select(what);

    /// <summary>Where people stand at each step, in metres; empty where walking takes no time, null where a step is nowhere.</summary>
    public IReadOnlyList<(double X, double Y)?> Places { get; init; } = [];

    /// <summary>What changes at a station changes each time that the product is there.</summary>
    public ProductLine WithStep(int index, Func<LineStep, LineStep> change)
        => this with { Steps = [.. Steps.Select((x, i) => i == index || x.SameAs == index ? change(x) : x)] };

    public ProductLine WithMove(int index, Func<LineMove, LineMove> change) => this with { Moves = With(Moves, index, change) };

    public ProductLine WithPeople(int crew, Func<int, int> change)
        => this with { Crews = With(Crews, crew, c => c with { People = change(c.People) }) };

    private static IReadOnlyList<T> With<T>(IReadOnlyList<T> all, int index, Func<T, T> change)
        => [.. all.Select((x, i) => i == index ? change(x) : x)];

    /// <summary>
    /// The room that people stand in at each step; -1 where they may stand in two, as at a hatch. Empty where nobody washes.
    /// </summary>
    public IReadOnlyList<int> Rooms { get; init; } = [];

    /// <summary>Hands are washed so long before the first work, after a break, and on every way into another room.</summary>
    public long HandWash { get; init; }

    /// <summary>Whether hands are washed on the way from one step to another.</summary>
    public bool IsIntoAnotherRoom(int from, int to)
        => Rooms.Count > 0 && HandWash > 0 && Rooms[from] >= 0 && Rooms[to] >= 0 && Rooms[from] != Rooms[to];

    /// <summary>With empty hands, metres a second.</summary>
    public double WalkingSpeed { get; init; }

    /// <summary>Times differ from one run to the next.</summary>
    public bool HasSpread => ByProduct(StepsOf).SelectMany(s => s)
        .Any(s => s.Work.Shape != TimeShape.Fixed || s.Stay.Shape != TimeShape.Fixed);

    /// <summary>Every piece takes the mean time: for comparing lines in one run each.</summary>
    public ProductLine WithoutSpread() => !HasSpread
        ? this
        : this with { Steps = [.. Steps.Select(s => s with { Work = new TaskTime(s.Work.Mean), Stay = new TaskTime(s.Stay.Mean) })] };

    public double WalkMetres(long walk) => Ticks.Seconds(walk) * WalkingSpeed;

    /// <summary>How much work a pace is, about: a run, or as many as are made where times differ.</summary>
    public long Weight => RunWeight * (HasSpread ? SpreadRuns : 1);

    /// <summary>Of one run: each item at each step, and with each a look at all that the largest crew could do.</summary>
    public long RunWeight
    {
        get
        {
            int[] own = [.. Crews.Select((_, c) => Steps.Count(s => s.Crew == c) + Moves.Count(m => m.Crew == c))];
            int jobs = Crews.Select((crew, c) => own[c] + crew.Helps.Sum(h => own[h])).DefaultIfEmpty(0).Max();
            int people = Crews.Select(c => c.People).DefaultIfEmpty(0).Max();
            long once = (long)Items * Steps.Count * Products * (1 + ((jobs + people) / LooksOfAnItem));
            double times = Steps.Aggregate(1.0, (all, s) => all / (1 - s.SentBack));
            return times > 1 ? (long)Math.Min(TooMuch, once * times) : once;
        }
    }

    /// <summary>More than anything that is run, and small enough to be multiplied.</summary>
    private const double TooMuch = 1e12;

    /// <summary>So many looks cost as much as an item at a step. Own estimate.</summary>
    private const int LooksOfAnItem = 8;

    /// <summary>Ten runs and draws of a logarithm: of a line whose times differ. Own estimate.</summary>
    private const int SpreadRuns = 12;

    /// <summary>The straight way with empty hands from step to step.</summary>
    public long Walk(int from, int to)
    {
        if (from == to || Places.Count == 0 || Places[from] is not { } a || Places[to] is not { } b)
        {
            return 0;
        }

        double x = a.X - b.X;
        double y = a.Y - b.Y;
        return Ticks.FromSeconds(Math.Sqrt((x * x) + (y * y)) / WalkingSpeed);
    }
}
