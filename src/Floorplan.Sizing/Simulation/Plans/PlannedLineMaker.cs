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

    /// <summary>All work and stays of a day, in ticks, so that sums stay exact; own bound.</summary>
    private const double LongestDay = 100 * 366.0 * 24 * Ticks.Hour;

    private readonly PlanFacts facts;
    private readonly Plan plan;
    private readonly List<DayNeed> needs = [];
    private readonly List<LineWay> ways;
    private readonly LineWays line;
    private readonly List<LineCrew> crews = [];
    private readonly Dictionary<string, int> crewOf = new(StringComparer.Ordinal);

    private PlannedLineMaker(PlanFacts facts)
    {
        this.facts = facts;
        plan = facts.Plan;
        ways = [.. LineWay.During(facts, Stream.Product)];
        line = new LineWays(ways);
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

        if (line.All.Count == 0)
        {
            Need("plan", "no flow of product", "`flow product` with the stations in order, such as `outside -> d1 -> bench -> rack`");
        }

        // Without a target the figures of the stations are asked for all the same.
        var asked = targets.Count > 0 ? targets : [new PlannedTarget(0, StepOfStation.Unit(plan), 1, Ticks.Hour, 1)];
        var nets = asked.Select(NetOf).ToList();
        var back = SentBack.Of(facts, line, nets, needs);
        var lots = asked.Zip(nets, (t, n) => Lot(t, n, back)).ToList();
        if (line.Places.IsTooMany)
        {
            Need("plan", FormattableString.Invariant($"more than {LinePlaces.Most} places in the line of product"), "two plans");
        }

        if (targets.Count == 0 || targets.Count < plan.Day!.Targets.Count)
        {
            return Missing();
        }

        long hours = targets.Sum(t => t.Hours);
        var (bins, waste) = PlannedBins.Of(facts, Stops, crewOf);
        lots = [.. lots.Select(l => l with { Steps = [.. l.Steps.Select((s, i) => s with { Waste = WasteOf(i) })] })];
        var shared = Empty(bins, PlannedTarget.Breaks(plan, hours), hours);
        var alone = lots.ConvertAll(l => shared with { Steps = l.Steps, Moves = l.Moves, Supply = l.Supply });
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
                whole, [.. targets.Zip(alone, (t, l) => new PlannedProduct(t.Product, t.Unit, t.Rate, t.Hours, l))], StationOfStep(), [])
            {
                Stops = Stops,
            };

        // What is thrown away of a piece is thrown away once, however often the piece comes.
        IReadOnlyList<(int Bin, double Kilograms)> WasteOf(int place) => line.Places.All[place].SameAs >= 0
            ? []
            : [.. waste[place].Select(w => (w.Item1, w.Item2 * back.Once(place)))];
    }

    private IReadOnlyList<Stop> Stops => line.Stops;

    /// <summary>The ways that a product takes; told where there are none.</summary>
    private LineNet NetOf(PlannedTarget target)
    {
        var net = line.NetOf(target.Unit);
        if (net is null && line.All.Count > 0)
        {
            Need(
                "plan", $"no flow of product for {target.Unit}",
                $"`flow product for {target.Unit}` with the stations in order, or take `for` out of the flow that they take too");
        }

        if (net is not null && line.EndsTooEarly(net) is { } place)
        {
            Need(
                place.Stop.Name,
                $"the product comes to {place.Stop.Name} again and does not go on from there, though it does the first time",
                $"the way on from {place.Stop.Name} as the last line of the flow, in the order in which the product goes");
        }

        return net ?? line.Places.Net();
    }

    private PlannedLine Missing() => new(null, [], StationOfStep(), [.. needs.DistinctBy(n => n.Missing)]);

    private IReadOnlyList<Station?> StationOfStep() => [.. Stops.Select(s => (s as StationStop)?.Station)];

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
                FormattableString.Invariant($"{line.Items} items through {Stops.Count} places with {crews.Sum(c => c.People)} people are ")
                    + "more than are run",
                "a shorter day, or count in trays or crates");
        }
    }

    /// <summary>The steps and ways as one product sees them.</summary>
    private LineLot Lot(PlannedTarget target, LineNet net, SentBack back)
    {
        List<LineMove> moves = [.. line.All.Select(w => Move(w, target.Product, net)), .. back.Moves(net, CrewAt)];
        var coming = moves.Where(m => m is { IsTaken: true, IsBack: false }).ToLookup(m => m.To);
        return new LineLot(
            target.Supply(plan), 0,
            [.. line.Places.All.Select((p, i) => Step(p, i, target.Product, net, coming[i]) with { SentBack = back.ShareOf(net, i) })],
            moves);
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
        Rooms = [.. Stops.Select(RoomOf)],
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

    private LineStep Step(LinePlace place, int index, int product, LineNet net, IEnumerable<LineMove> coming)
    {
        int load = coming.Select(m => m.Load).DefaultIfEmpty(0).Max();
        var step = place.Stop switch
        {
            StationStop when !net.Has(index) => new LineStep
            {
                Name = place.Stop.Name,
                Places = line.All.Any(w => w.From == index) ? 1 : LineStep.Unlimited,
            },
            StationStop { Station: var station } => StepOfStation.Of(
                plan, station, product, CrewAt(station), !net.GoesOn(index), needs) with
            {
                // What a load brings has room on the trolley or beside the work until it is taken.
                Waits = Math.Max(load, StepOfStation.Waits(plan, station, product)),
            },
            OutsideStop => new LineStep { Name = Outside, Places = LineStep.Unlimited },

            // Set down on the sill, taken from there.
            _ => new LineStep { Name = place.Stop.Name, Places = Math.Max(1, load) },
        };
        return step with { SameAs = place.SameAs, Time = place.Time };
    }

    private LineMove Move(PlacedWay placed, int product, LineNet net)
    {
        var (way, from, to) = (placed.Way, placed.From, placed.To);
        bool isTaken = placed.Nets.Contains(net);
        if (way.IsStart)
        {
            return new LineMove(from, to) { IsTaken = isTaken };
        }

        if (way.Legs.FirstOrDefault(l => l.Route is null) is { } blocked)
        {
            Need(
                way.From.Name, blocked.Blocked ?? $"no way from {blocked.Leg.From.Name} to {blocked.Leg.To.Name}",
                "what the finding on that way asks for");
            return new LineMove(from, to) { IsTaken = isTaken };
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
            IsTaken = isTaken,
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
        .. Stops.Select((s, i) => s is OutsideStop ? OutsidePlace(isStart: i == 0) : facts.Space.StandingAt(s) ?? Middle(s))
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
