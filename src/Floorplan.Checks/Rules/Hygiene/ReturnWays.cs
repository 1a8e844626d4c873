using Floorplan.Checks.Framework;
using Floorplan.Model.Flows;
using Floorplan.Model.Rooms;
using Floorplan.Model.Stations;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Checks.Rules.Hygiene;

/// <summary>Follows crates, knives and trolleys that come back, and says where they are still unwashed.</summary>
internal sealed class ReturnWays
{
    private readonly HashSet<object> unwashed = new(ReferenceEqualityComparer.Instance);

    public ReturnWays(CheckContext context)
    {
        bool dirty = true, said = false;
        (int Flow, string Stop) last = default;
        foreach (var chain in Journey.Of(context.Space, Stream.Returns).GroupBy(j => (Flow: j.Flow.Span.Start, j.Legs[0].Leg.Chain)))
        {
            // What leaves a clean room is as clean as the product there; what comes from anywhere else has been used.
            // A line that begins where the one before ended goes on with the same things.
            bool goesOn = chain.First().From is not OutsideStop && chain.First().From.Name == last.Stop && chain.Key.Flow == last.Flow;
            dirty = !goesOn || dirty;
            said = goesOn && said;
            foreach (var journey in chain)
            {
                last = (chain.Key.Flow, journey.To.Name);
                bool fromClean = IsClean(journey.FromRoom);
                dirty &= !fromClean;
                if (dirty)
                {
                    unwashed.UnionWith(journey.Legs.Select(l => l.Leg));
                    if (!said && Entered(journey) is { } room)
                    {
                        said = true;
                        Entries.Add((journey, room));
                    }
                }

                bool washes = IsWashingPlace(journey.To);
                dirty = !washes && (dirty || !IsClean(journey.ToRoom));
            }
        }
    }

    /// <summary>The first clean or cold room of each chain that unwashed things come into, other than to be washed there.</summary>
    public List<(Journey Journey, Room Room)> Entries { get; } = [];

    public bool IsUnwashed(Leg leg) => unwashed.Contains(leg);

    public static bool IsClean(Room? room) => room?.Class is HygieneClass.Clean or HygieneClass.Cold;

    private static Room? Entered(Journey journey)
    {
        int last = journey.Rooms.Count - (IsWashingPlace(journey.To) ? 1 : 0);
        return journey.Rooms.Take(last).FirstOrDefault(IsClean);
    }

    /// <summary>A sink that is not for hands, or a station with hot water or steam.</summary>
    private static bool IsWashingPlace(Stop stop) => stop is StationStop { Station: var s }
        && ((s.Role == StationRole.Sink && !s.IsHandSink) || s.Needs.Any(n => n.Kind is NeedKind.HotWater or NeedKind.Steam));
}
