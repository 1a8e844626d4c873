using Floorplan.Model.Flows;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Processing;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Plans;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Sizing.Cold.Loads;

/// <summary>What the day does to one cold room.</summary>
/// <param name="Arrivals">Ways that bring product in.</param>
/// <param name="Trips">By the id of an opening: loads through it during work.</param>
/// <param name="HandsSeconds">People at work at stations of the room, summed.</param>
/// <param name="WorkSeconds">How long hands work in the unit.</param>
internal sealed record RoomDay(
    IReadOnlyList<Arrival> Arrivals, IReadOnlyDictionary<string, int> Trips, double HandsSeconds, double WorkSeconds)
{
    /// <summary>Null where the day cannot be run.</summary>
    public static RoomDay? Of(PlanFacts facts, Room room)
    {
        if (facts.Day is not { Planned.Whole: { } line, Paced: { } day })
        {
            return null;
        }

        var stations = facts.Day.Planned.Stations;
        var ways = LineWay.During(facts, Stream.Product).ToLookup(w => (w.From.Name, w.To.Name));
        var taken = new Dictionary<(string, string), int>();
        var trips = new Dictionary<string, int>(StringComparer.Ordinal);
        var arrivals = new List<Arrival>();
        for (int i = 0; i < line.Moves.Count; i++)
        {
            foreach (var opening in Next(line.Moves[i]) is { } way ? Through(way) : [])
            {
                trips[opening.Id] = trips.GetValueOrDefault(opening.Id) + day.Moves[i].Trips;
            }

            if (stations[line.Moves[i].To]?.Room.Id == room.Id && day.Moves[i].Items > 0)
            {
                var before = Before(line, stations, line.Moves[i].From);
                if (before?.Room.Id != room.Id)
                {
                    arrivals.Add(new Arrival(
                        before?.Room, WasChilled(line, stations, line.Moves[i].From),
                        Math.Min(1, day.Moves[i].Items / (double)Math.Max(1, line.Items))));
                }
            }
        }

        double hands = day.Steps.Index().Where(s => stations[s.Index]?.Room.Id == room.Id).Sum(s => s.Item.HandsTime) / Ticks.Second;
        long until = day.People.Select(p => p.Until).DefaultIfEmpty(day.End).Max();
        return new RoomDay(arrivals, trips, hands, Ticks.Seconds(until));

        // Two flows may have a way between the same places: the line has a move for each, in the order of the flows.
        LineWay? Next(LineMove move)
        {
            var key = (line.Steps[move.From].Name, line.Steps[move.To].Name);
            int number = move.IsBack ? 0 : taken.GetValueOrDefault(key);
            taken[key] = number + (move.IsBack ? 0 : 1);
            return ways[key].ElementAtOrDefault(number) ?? ways[key].LastOrDefault();
        }
    }

    private static IEnumerable<Opening> Through(LineWay way)
        => way.Legs.Select(l => l.Leg.To).OfType<OpeningStop>().Select(o => o.Opening).DistinctBy(o => o.Id);

    /// <summary>The station that it comes from, over hatches; null outside.</summary>
    private static Station? Before(ProductLine line, IReadOnlyList<Station?> stations, int step)
        => Back(line, step).Select(s => stations[s]).FirstOrDefault(s => s is not null);

    private static bool WasChilled(ProductLine line, IReadOnlyList<Station?> stations, int step)
        => Back(line, step).Select(s => stations[s]).OfType<Station>()
            .Any(s => s.Stays is not null && (s.Is(KnownProcess.Chilling) || s.Needs.Any(n => n.Kind == NeedKind.Ice)));

    /// <summary>A step and those before it, each once.</summary>
    private static IEnumerable<int> Back(ProductLine line, int step)
    {
        var seen = new HashSet<int> { step };
        var open = new Queue<int>([step]);
        while (open.TryDequeue(out int at))
        {
            yield return at;
            foreach (var move in line.Moves.Where(m => m.To == at && seen.Add(m.From)))
            {
                open.Enqueue(move.From);
            }
        }
    }
}

/// <summary>Product that comes into a cold room.</summary>
/// <param name="From">The room that it comes from; null from outside.</param>
/// <param name="WasChilled">It has been in a chill tank or the like before.</param>
/// <param name="Share">Of the items of the day.</param>
internal sealed record Arrival(Room? From, bool WasChilled, double Share);
