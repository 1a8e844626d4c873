using Floorplan.Model;
using Floorplan.Model.Rooms;
using Floorplan.Model.Stations;

namespace Floorplan.Checks.Rules.Hygiene;

/// <summary>The people of a plan and what they need for themselves.</summary>
internal static class Welfare
{
    /// <summary>All of the crew; 0 where the plan does not say.</summary>
    public static int People(Plan plan) => plan.Day?.Crew.Values.Sum() ?? 0;

    /// <summary>Ids of the rooms and stations that the crew is counted at.</summary>
    public static IReadOnlyList<string> Places(Plan plan) => [.. (plan.Day?.Crew ?? new Dictionary<string, int>()).Where(c => c.Value > 0).Select(c => c.Key).Order(StringComparer.Ordinal)];

    /// <summary>Toilets in this unit and elsewhere on its site. In a toilet room each thing that is no sink, bin or store is one; an empty one has one.</summary>
    public static int Toilets(Plan plan)
    {
        var bowls = plan.Stations.Where(s => s.Role == StationRole.Station && s.Room.Class == HygieneClass.Toilet).ToLookup(s => s.Room.Id);
        return plan.Rooms.Where(r => r.Class == HygieneClass.Toilet).Sum(r => Math.Max(1, bowls[r.Id].Count())) + (plan.Day?.ToiletsElsewhere ?? 0);
    }
}
