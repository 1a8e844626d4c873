using Floorplan.Model;
using Floorplan.Model.Rooms;
using Floorplan.Model.Stations;

namespace Floorplan.Checks.Rules.Hygiene;

/// <summary>The people of a plan and what they need for themselves.</summary>
internal static class Welfare
{
    /// <summary>Of the United Kingdom; it counts people of one toilet group, and as many basins as toilets.</summary>
    public static Source ApprovedCode { get; } = new Source(
        "Workplace health, safety and welfare, UK approved code of practice L24, regulations 20 and 21, table 1: 1 toilet and basin "
            + "for 1 to "
            + "5 people, 2 to 25, 3 to 50, 4 to 75, 5 to 100", Origin.FoundInSecondaryCopy, Force.Guidance).In("uk");

    /// <summary>How many people 1, 2, 3 … serve by that table; from its last row on each more serves 25.</summary>
    public static IReadOnlyList<int> UpTo { get; } = [5, 25, 50, 75, 100];

    private const int EachMore = 25;

    public static int ServedBy(int number)
        => number <= 0 ? 0 : number <= UpTo.Count ? UpTo[number - 1] : UpTo[^1] + (EachMore * (number - UpTo.Count));

    /// <summary>The fewest that serve so many people.</summary>
    public static int Needed(int people) => people <= 0 ? 0 : people <= UpTo[^1]
        ? UpTo.TakeWhile(served => served < people).Count() + 1
        : UpTo.Count + (int)Math.Ceiling((people - UpTo[^1]) / (double)EachMore);

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
