using Floorplan.Model;
using Floorplan.Model.Flows;
using Floorplan.Model.Rooms;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Simulation.Line;
using NetTopologySuite.Geometries;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Sizing.Simulation.Plans;

/// <summary>
/// Makes the line of a plan: its stations as steps, its ways as moves, its crew as people who share the work of their room.
/// </summary>
internal sealed class PlannedLineMaker
{
    private const string Outside = "outside";

    /// <summary>A unit with more stations in its line is no small one; own bound.</summary>
    private const int MostSteps = 500;

    /// <summary>All work and stays of a day, in ticks, so that sums stay exact; own bound.</summary>
    private const double LongestDay = 100 * 366.0 * 24 * Ticks.Hour;

    private readonly PlanFacts facts;
    private readonly Plan plan;
    private readonly List<DayNeed> needs = [];
    private readonly List<LineWay> ways;
    private readonly Dictionary<string, int> places = new(StringComparer.Ordinal);
    private readonly List<Stop> stops = [];
    private readonly List<LineCrew> crews = [];
    private readonly Dictionary<string, int> crewOf = new(StringComparer.Ordinal);

    private PlannedLineMaker(PlanFacts facts)
    {
        this.facts = facts;
        plan = facts.Plan;
        ways = [.. LineWay.During(facts, Stream.Product)];
    }

    public static PlannedLine Of(PlanFacts facts) => new PlannedLineMaker(facts).Make();

    private PlannedLine Make()
    {
        var targets = PlannedTarget.Of(plan, needs);
        foreach (var (name, count) in (plan.Day?.Crew ?? new Dictionary<string, int>()).Where(c => c.Value > 0)
            .OrderBy(c => c.Key, StringComparer.Ordinal))
        {
            crewOf[name] = crews.Count;
            crews.Add(new LineCrew(name, count));
        }

        AddHelp();

        // Product leaves a store after work, so the way from it is none of the day.
        var product = ways.Where(w => !(w.From is StationStop { Station.Role: StationRole.Store } && w.To is OutsideStop)).ToList();
        if (product.Count == 0)
        {
            Need("plan", "no flow of product", "`flow product` with the stations in order, such as `outside -> d1 -> bench -> rack`");
        }

        PlaceOf(new OutsideStop(default), isStart: true);
        foreach (var way in product)
        {
            PlaceOf(way.From, isStart: true);
            PlaceOf(way.To, isStart: false);
        }

        bool[] goesOn = new bool[stops.Count];
        product.ForEach(w => goesOn[Index(w.From, true)] = true);
        if (product.Count > 0 && !product.Exists(w => w.From is OutsideStop))
        {
            Connect(product, goesOn);
        }

        // Without a target the figures of the stations are asked for all the same.
        var asked = targets.Count > 0 ? targets : [new PlannedTarget(0, StepOfStation.Unit(plan), 1, Ticks.Hour, 1)];
        var lots = asked.Select(t => Lot(t, product, goesOn)).ToList();
        if (stops.Count > MostSteps)
        {
            Need("plan", FormattableString.Invariant($"{stops.Count} places in the line of product, more than are run"), "two plans");
        }

        if (RoundTrip.IsIn(stops.Count, lots[0].Moves))
        {
            Need("plan", "the product goes round in a circle", "the flow so that no station comes twice");
        }

        if (targets.Count == 0 || targets.Count < plan.Day!.Targets.Count)
        {
            return Missing();
        }

        long hours = targets.Sum(t => t.Hours);
        var (bins, waste) = PlannedBins.Of(facts, stops, crewOf);
        lots = [.. lots.Select(l => l with { Steps = [.. l.Steps.Select((s, i) => s with { Waste = waste[i] })] })];
        var line = Empty(bins, PlannedTarget.Breaks(plan, hours), hours);
        var alone = lots.ConvertAll(l => line with { Steps = l.Steps, Moves = l.Moves, Supply = l.Supply });
        long from = targets[0].Hours;
        var later = new List<LineLot>();
        for (int p = 1; p < lots.Count; p++)
        {
            later.Add(lots[p] with { From = from });
            from += targets[p].Hours;
        }

        var whole = alone[0] with { Later = later };
        Bound(whole);
        return needs.Count > 0
            ? Missing()
            : new PlannedLine(
                whole, [.. targets.Zip(alone, (t, l) => new PlannedProduct(t.Product, t.Unit, t.Rate, t.Hours, l))], StationOfStep(), []);
    }

    private PlannedLine Missing() => new(null, [], StationOfStep(), [.. needs.DistinctBy(n => n.Missing)]);

    private IReadOnlyList<Station?> StationOfStep() => [.. stops.Select(s => (s as StationStop)?.Station)];

    /// <summary>What is too much to be run is told.</summary>
    private void Bound(ProductLine line)
    {
        if (line.ByProduct(p => line.StepsOf(p).Sum(s => 2.0 * s.Work.Mean + s.Pause + s.Stay.Mean + s.ChangeOver)).Sum() * line.Items
            > LongestDay)
        {
            Need("day", "the times of work and stay add up to more than a hundred years", "the times of the stations as they are meant");
        }

        if (line.Weight > PlannedDay.MostWeight)
        {
            Need(
                "day",
                FormattableString.Invariant($"{line.Items} items through {stops.Count} places with {crews.Sum(c => c.People)} people are ")
                    + "more than are run",
                "a shorter day, or count in trays or crates");
        }
    }

    /// <summary>The steps and ways as one product sees them.</summary>
    private LineLot Lot(PlannedTarget target, List<LineWay> product, bool[] goesOn)
    {
        List<LineMove> moves = [.. product.Select(w => Move(w, target.Product))];
        var coming = moves.ToLookup(m => m.To);
        return new LineLot(
            target.Supply(plan), 0, [.. stops.Select((s, i) => Step(s, target.Product, !goesOn[i], coming[i]))], moves);
    }

    /// <summary>What all products share: people, bins, breaks and where people stand.</summary>
    private ProductLine Empty(List<LineBin> bins, IReadOnlyList<LineBreak> breaks, long hours) => new()
    {
        Steps = [],
        Moves = [],
        Supply = new LineSupply(0, TaskTime.None),
        Crews = crews,
        Bins = bins,
        Places = Places(),
        Breaks = breaks,
        RestShare = breaks.Sum(b => b.To - b.From) / (double)hours,
        Rooms = [.. stops.Select(RoomOf)],
        HandWash = Ticks.Of(plan.Day?.HandWash) ?? Ticks.FromSeconds(DayAssumptions.HandWash),
        WalkingSpeed = DayAssumptions.Empty,
    };

    /// <summary>Who helps whom, in the order said; a crew of nobody neither helps nor is helped.</summary>
    private void AddHelp()
    {
        foreach (var help in (plan.Day?.Helps ?? []).Where(h => h.Where != h.From).GroupBy(h => h.From, StringComparer.Ordinal))
        {
            foreach (string name in help.Select(h => h.Where).Append(help.Key).Where(n => !crewOf.ContainsKey(n)))
            {
                Need(name, $"nobody works in {name}", $"`crew {name} 2` in the day, or take out its `helps`");
            }

            if (crewOf.TryGetValue(help.Key, out int from))
            {
                var helped = help.Where(h => crewOf.ContainsKey(h.Where)).Select(h => crewOf[h.Where]).Distinct();
                crews[from] = crews[from] with { Helps = [.. helped] };
            }
        }
    }

    /// <summary>Where people stand for a stop: its room by number, or -1 where that may be either side.</summary>
    private int RoomOf(Stop stop) => stop is StationStop at
        ? plan.Rooms.Index().First(r => r.Item.Id == at.Station.Room.Id).Index
        : -1;

    /// <summary>A line that begins at a station, where the day's items are from the start.</summary>
    private void Connect(List<LineWay> product, bool[] goesOn)
    {
        var ends = product.Select(w => w.To.Name).ToHashSet(StringComparer.Ordinal);
        foreach (var first in product.Where(w => !ends.Contains(w.From.Name)).DistinctBy(w => w.From.Name).ToList())
        {
            product.Add(new LineWay(new OutsideStop(default), first.From, [first.Legs[0] with { Route = null }]) { IsStart = true });
        }

        goesOn[0] = true;
    }

    /// <summary>Where product comes from and where it leaves to are two places.</summary>
    private int PlaceOf(Stop stop, bool isStart)
    {
        string name = Name(stop, isStart);
        if (!places.TryGetValue(name, out int place))
        {
            places[name] = place = stops.Count;
            stops.Add(stop);
        }

        return place;
    }

    private static string Name(Stop stop, bool isStart) => stop is OutsideStop && !isStart ? "outside again" : stop.Name;

    private int Index(Stop stop, bool isStart) => places[Name(stop, isStart)];

    private LineStep Step(Stop stop, int product, bool isLast, IEnumerable<LineMove> coming)
    {
        int load = coming.Select(m => m.Load).DefaultIfEmpty(0).Max();
        return stop switch
        {
            StationStop { Station: var station } => StepOfStation.Of(plan, station, product, CrewAt(station), isLast, needs) with
            {
                // What a load brings has room on the trolley or beside the work until it is taken.
                Waits = Math.Max(load, StepOfStation.Waits(plan, station, product)),
            },
            OutsideStop => new LineStep { Name = Outside, Places = LineStep.Unlimited },

            // Set down on the sill, taken from there.
            _ => new LineStep { Name = stop.Name, Places = Math.Max(1, load) },
        };
    }

    private LineMove Move(LineWay way, int product)
    {
        int from = Index(way.From, true);
        int to = Index(way.To, false);
        if (way.IsStart)
        {
            return new LineMove(from, to);
        }

        if (way.Legs.FirstOrDefault(l => l.Route is null) is { } blocked)
        {
            Need(
                way.From.Name, blocked.Blocked ?? $"no way from {blocked.Leg.From.Name} to {blocked.Leg.To.Name}",
                "what the finding on that way asks for");
            return new LineMove(from, to);
        }

        double metres = way.Millimetres / 1000;
        double each = PlannedLine.ItemKilograms(plan, product) ?? 0;
        int items = way.Carriage.Kind switch
        {
            _ when PlannedLine.InItems(way.Carriage.Takes, plan, product) is { } said
                => (int)Math.Clamp(Math.Floor(said + 1e-9), 1, 10_000),
            CarriageKind.Trolley => Items(DayAssumptions.TrolleyKilograms, each),
            CarriageKind.Hand when way.Carriage.LoadKilograms is { } load => Items(load, each),
            _ => 1,
        };
        bool byPerson = way.Carriage.Kind is CarriageKind.Hand or CarriageKind.Trolley or CarriageKind.Rail or CarriageKind.Walk;
        double speed = way.Carriage.Kind switch
        {
            CarriageKind.Trolley => DayAssumptions.Trolley,
            CarriageKind.Conveyor => DayAssumptions.Belt,
            _ => DayAssumptions.Loaded,
        };
        double handling = byPerson ? DayAssumptions.PickAndPut * (way.Carriage.Kind == CarriageKind.Trolley ? items : 1) : 0;
        return new LineMove(from, to)
        {
            Load = items,
            Carriers = way.Carriage.Trolleys ?? 1,
            There = Ticks.FromSeconds((metres / speed) + handling),
            Back = items > 1 ? Ticks.FromSeconds(metres / DayAssumptions.Empty) : 0,
            Crew = byPerson ? CrewOf((way.From as StationStop)?.Station.Id, way.Room, way.From.Name) : -1,
            Metres = metres,
        };
    }

    private static int Items(double kilograms, double each)
        => each > 0 ? Math.Clamp((int)Math.Floor((kilograms / each) + 1e-9), 1, 10_000) : 1;

    /// <summary>-1 where no hands are needed.</summary>
    private int CrewAt(Station station) => StepOfStation.HasWork(station) ? CrewOf(station.Id, station.Room, station.Id) : -1;

    /// <summary>Who works at a station, or else in its room.</summary>
    private int CrewOf(string? station, Room? room, string at)
    {
        if (station is not null && crewOf.TryGetValue(station, out int own) || room is not null && crewOf.TryGetValue(room.Id, out own))
        {
            return own;
        }

        string where = room?.Id ?? at;
        Need(where, $"nobody works in {where}", $"`crew {where} 2` in the day");
        return -1;
    }

    /// <summary>With empty hands people take the straight way from where they stand to where they stand next.</summary>
    private IReadOnlyList<(double X, double Y)?> Places() =>
    [
        .. stops.Select((s, i) => s is OutsideStop ? OutsidePlace(isStart: i == 0) : facts.Space.StandingAt(s) ?? Middle(s))
            .Select(c => c is null ? ((double, double)?)null : (c.X / 1000, c.Y / 1000)),
    ];

    /// <summary>Where the first way from outside begins, or one to outside ends.</summary>
    private Coordinate? OutsidePlace(bool isStart) => ways
        .Where(w => isStart ? w.From is OutsideStop : w.To is OutsideStop)
        .Select(w => (isStart ? w.Legs[0] : w.Legs[^1]).Route?.Path)
        .FirstOrDefault(p => p is not null) is { } path
            ? path.Coordinates[isStart ? 0 : path.NumPoints - 1]
            : null;

    private static Coordinate? Middle(Stop stop) => (stop as StationStop)?.Station.Footprint.Centroid.Coordinate;

    private void Need(string of, string missing, string write) => needs.Add(
        new DayNeed(of, missing, write, plan.Stations.FirstOrDefault(s => s.Id == of)?.Span ?? plan.Day?.Span ?? plan.Head.Span));
}
