using Floorplan.Language.Quantities;
using Floorplan.Model.Flows;
using Floorplan.Model.Space;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Plans;

/// <param name="Net">The ways of the product that is sent back.</param>
/// <param name="From">Index of the place.</param>
/// <param name="To">The same.</param>
/// <param name="Share">Of the pieces.</param>
/// <param name="Station">That sends them back.</param>
internal sealed record BackWay(LineNet Net, int From, int To, double Share, Station Station, Route Route);

/// <summary>The ways back of what is worked on a second time at an earlier station.</summary>
internal sealed class SentBack
{
    /// <summary>Of more hardly anything ever leaves; own bound.</summary>
    private const double MostShare = 0.9;

    private readonly List<BackWay> ways = [];

    public static SentBack Of(PlanFacts facts, LineWays line, IEnumerable<LineNet> nets, List<DayNeed> needs)
    {
        var all = new SentBack();
        foreach (var net in nets.Distinct())
        {
            var places = line.Places.All.Index().Where(
                p => net.Has(p.Index) && p.Item.Stop is StationStop { Station: { ReworkAt: not null, Rework.Base: > 0 } });
            foreach (var station in places.GroupBy(p => p.Item.Stop.Name, StringComparer.Ordinal))
            {
                all.Add(facts, line, net, (StationStop)station.First().Item.Stop, [.. station.Select(p => p.Index)], needs);
            }
        }

        return all;
    }

    public double ShareOf(LineNet net, int place) => ways.Find(w => w.Net == net && w.From == place)?.Share ?? 0;

    /// <summary>What part of all that comes to a place comes there for the first time.</summary>
    public double Once(int place) => ways
        .Where(w => (w.To == place || w.Net.Reaches(w.To, place)) && (w.From == place || w.Net.Reaches(place, w.From)))
        .DistinctBy(w => (w.From, w.To)).Aggregate(1.0, (once, w) => once * (1 - w.Share));

    /// <summary>As the moves of one product: carried by hand, a piece at a time.</summary>
    /// <param name="crewAt">Index of the crew at a station.</param>
    public IEnumerable<LineMove> Moves(LineNet net, Func<Station, int> crewAt) => ways.GroupBy(w => (w.From, w.To)).Select(way =>
    {
        double metres = way.First().Route.LengthMm / 1000;
        return new LineMove(way.Key.From, way.Key.To)
        {
            IsBack = true,
            IsTaken = way.Any(w => w.Net == net),
            There = Ticks.FromSeconds((metres / DayAssumptions.Loaded) + DayAssumptions.PickAndPut),
            Crew = crewAt(way.First().Station),
            Metres = metres,
        };
    });

    /// <summary>The way that a piece is carried back, over the real floor; null where there is none.</summary>
    public static Route? RouteOf(PlanFacts facts, Stop from, Stop to)
        => from is StationStop { Station: var a } && to is StationStop { Station: var b }
            && facts.Space.StandingAt(from) is { } start && facts.Space.StandingAt(to) is { } end
                ? facts.Space.Find(a.Room, start, b.Room, end, Mover.Carrying)
                : null;

    private void Add(PlanFacts facts, LineWays line, LineNet net, StationStop stop, IReadOnlyList<int> places, List<DayNeed> needs)
    {
        var station = stop.Station;
        string at = station.ReworkAt!;
        double share = station.Rework!.Value.Base;
        if (share > MostShare)
        {
            Need($"so much rework at {station.Id} that hardly anything leaves", $"`rework 90 % at {at}` or less in station {station.Id}");
            return;
        }

        var pairs = places.Select(p => (From: p, To: Latest(p))).Where(p => p.To >= 0).ToList();
        if (pairs.Count == 0)
        {
            string share_ = QuantityText.Of(share, Measure.Ratio, facts.Plan.Units);
            Need(
                $"{station.Id} sends pieces back to {at}, which the product does not pass before it",
                $"a station that comes before {station.Id} in the flow, or `rework {share_}` alone, which is done at {station.Id}");
            return;
        }

        foreach (var (from, to) in pairs)
        {
            if (RouteOf(facts, stop, line.Places.All[to].Stop) is not { } route)
            {
                Need(
                    $"no way for hands from {station.Id} back to {at}",
                    $"another station after `at` in station {station.Id}, or a door on the way");
                return;
            }

            ways.Add(new BackWay(net, from, to, share, station, route));
        }

        int Latest(int place) => line.Places.All.Index()
            .Where(p => p.Item.Stop is StationStop s && s.Station.Id == at && p.Index != place && net.Reaches(p.Index, place))
            .Select(p => p.Index).DefaultIfEmpty(-1).Max();

        void Need(string missing, string write) => needs.Add(new DayNeed(station.Id, missing, write, station.Span));
    }
}
