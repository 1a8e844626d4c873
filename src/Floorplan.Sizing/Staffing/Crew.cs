using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Rooms;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Staffing;

/// <summary>
/// How many people work in the unit. The plan counts them by room or by station, each person once: those of a room and those of its
/// stations are added (own assumption).
/// </summary>
/// <param name="All">Of the whole crew; 0 where the plan does not say.</param>
/// <param name="Said">By the id of the room; 0 where the plan does not say.</param>
/// <param name="Working">The same, and where the plan says nothing of a station, its standing places.</param>
public sealed record Crew(Figure All, IReadOnlyDictionary<string, Figure> Said, IReadOnlyDictionary<string, Figure> Working)
{
    private static readonly Source Own = new("the crew of a plan adds up: each person is counted at one place", Origin.OwnAssumption);

    /// <summary>Ids of the rooms and stations that a plan counts the crew at, in the order of the alphabet.</summary>
    public static IReadOnlyList<string> PlacesOf(Plan plan) =>
        [.. (plan.Day?.Crew ?? new Dictionary<string, int>()).Where(c => c.Value > 0).Select(c => c.Key).Order(StringComparer.Ordinal)];

    /// <summary>Of rooms together.</summary>
    public int In(IEnumerable<Room> rooms) => rooms.Sum(r => (int)Said[r.Id].Value);

    internal static Crew Of(PlanFacts facts)
    {
        var plan = facts.Plan;
        var counts = plan.Day?.Crew ?? new Dictionary<string, int>();
        var stations = plan.Stations.ToLookup(s => s.Room.Id);
        var said = new Dictionary<string, Figure>(StringComparer.Ordinal);
        var working = new Dictionary<string, Figure>(StringComparer.Ordinal);
        foreach (var room in plan.Rooms)
        {
            said.TryAdd(room.Id, InRoom(plan, room, "crew", [.. stations[room.Id].Where(s => counts.ContainsKey(s.Id))], counts));
            working.TryAdd(
                room.Id,
                InRoom(
                    plan, room, "people who work there",
                    [.. stations[room.Id].Where(s => counts.ContainsKey(s.Id) || s.Workers.Count > 0)], counts));
        }

        var rooms = said.Values.Where(f => f.Value > 0).ToList();
        var all = Make(
            "crew", Figure.WholePlan, rooms.Sum(f => f.Value), [.. rooms.Select(FigureInput.Of)], "sum over the rooms",
            rooms.Count == 0 ? "not said" : WorkingText.Sum([.. rooms.Select(f => Number(f.Value))]));
        return new Crew(all, said, working);
    }

    private static Figure InRoom(Plan plan, Room room, string name, IReadOnlyList<Station> at, IReadOnlyDictionary<string, int> counts)
    {
        bool isSaid = counts.TryGetValue(room.Id, out int own);

        // Where the plan counts the room, places to stand say nothing more: people go from one to the next.
        int[] each = [.. at.Select(s => counts.TryGetValue(s.Id, out int count) ? count : isSaid ? 0 : s.Workers.Count)];
        var inputs = at.Select((s, i) => FigureInput.Said(
            counts.ContainsKey(s.Id) ? $"crew of {s.Id}" : $"standing places of {s.Id}", Number(each[i]),
            counts.ContainsKey(s.Id) ? plan.Day!.Span : s.Span));
        return Make(
            name, room.Id, own + each.Sum(),
            [.. isSaid ? [FigureInput.Said($"crew of {room.Id}", Number(own), plan.Day!.Span)] : Array.Empty<FigureInput>(), .. inputs],
            "the room's own number and those of its stations",
            each.Length == 0 && !isSaid ? "none" : WorkingText.Sum(
                [.. isSaid ? [Number(own)] : Array.Empty<string>(), .. each.Select(e => Number(e))]));
    }

    private static Figure Make(
        string name, string of, double people, IReadOnlyList<FigureInput> inputs, string formula, string substituted) => new()
        {
            Name = name,
            Of = of,
            Value = people,
            Kind = QuantityKind.Count,
            Text = QuantityText.Count(people, "person", "people"),
            Inputs = inputs,
            Formula = formula,
            Substituted = substituted,
            Source = Own,
        };

    private static string Number(double people) => QuantityText.Plain(people, 0);
}
