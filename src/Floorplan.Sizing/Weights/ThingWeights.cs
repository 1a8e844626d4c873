using Floorplan.Model;
using Floorplan.Model.Stations;

namespace Floorplan.Sizing.Weights;

/// <summary>What the things of a plan weigh, in kg, as far as the plan says.</summary>
public static class ThingWeights
{
    public static double? Full(Station station) => (station.WeightFull ?? station.WeightEmpty)?.Base;

    public static double? Empty(Station station) => (station.WeightEmpty ?? station.WeightFull)?.Base;

    public static double? Of(Station station, bool full) => full ? Full(station) : Empty(station);

    /// <summary>Ids of what has a weight, heaviest first.</summary>
    public static IReadOnlyList<Station> Weighed(Plan plan) => [.. plan.Stations.Where(s => Full(s) is not null).OrderByDescending(Full)];

    /// <summary>For sentences, so that nobody takes a part for the whole: <c>4 of 9 things have a weight</c>.</summary>
    public static string Counted(Plan plan)
    {
        int weighed = plan.Stations.Count(s => Full(s) is not null);
        return weighed == plan.Stations.Count ? "all things have a weight" : FormattableString.Invariant($"{weighed} of {plan.Stations.Count} things have a weight in the plan");
    }
}
