using System.Globalization;
using Floorplan.Model.Stations;
using NetTopologySuite.Index.Strtree;

namespace Floorplan.Model.Binding;

/// <summary>
/// Very many things in one place are refused: each pair of them is a mistake of its own, so that they take time as their number squared
/// and say no more than one sentence does.
/// </summary>
internal static class Heap
{
    public static void Tell(IReadOnlyList<Station> stations, Reports reports)
    {
        int most = PlanBounds.MostPairs + (PlanBounds.MorePairsForEach * stations.Count);
        var tree = new STRtree<Station>();
        foreach (var station in stations)
        {
            tree.Insert(station.Footprint.EnvelopeInternal, station);
        }

        // Each pair is met from both its sides.
        long met = 0;
        foreach (var station in stations)
        {
            met += tree.Query(station.Footprint.EnvelopeInternal).Count - 1;
            if (met > 2L * most)
            {
                string pairs = most.ToString("N0", CultureInfo.InvariantCulture).Replace(',', ' ');
                reports.Error(
                    "too-many-in-one-place", $"too many things stand in one place, about `{station.Id}`: more than {pairs} pairs of them",
                    station.Span, "place one beside the other, such as `east of`, or take out what was copied too often");
                return;
            }
        }
    }
}
