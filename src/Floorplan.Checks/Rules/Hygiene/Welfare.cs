using Floorplan.Model;
using Floorplan.Model.Rooms;
using Floorplan.Model.Stations;

namespace Floorplan.Checks.Rules.Hygiene;

/// <summary>The people of a plan and what they need for themselves.</summary>
internal static class Welfare
{
    /// <summary>
    /// Toilets in this unit and elsewhere on its site. In a toilet room each thing that is no sink, bin or store is one; an empty one
    /// has one.
    /// </summary>
    public static int Toilets(Plan plan)
    {
        var bowls = plan.Stations.Where(s => s.Role == StationRole.Station && s.Room.Class == HygieneClass.Toilet).ToLookup(s => s.Room.Id);
        return plan.Rooms.Where(r => r.Class == HygieneClass.Toilet).Sum(r => Math.Max(1, bowls[r.Id].Count()))
            + (plan.Day?.ToiletsElsewhere ?? 0);
    }
}
