using Floorplan.Model.Openings;
using Floorplan.Model.Space.Free;
using Floorplan.Model.Space.Mesh;
using Floorplan.Model.Space.Search;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space.Keeping;

/// <summary>
/// Shortest ways of earlier plans. A way is made of its ends, its mover, the floors that its search looked at, and the gates of those
/// floors; another room may change as it likes.
/// </summary>
internal sealed class KeptWays
{
    private readonly Generations<ContentKey, KeptWay> ways = new();

    public void Next() => ways.Next();

    public Way? Find(
        FloorMap map, IReadOnlyList<FreePlace> starts, IReadOnlyList<FreePlace> goals, Func<Opening, bool>? mayPass)
    {
        var key = Key(map, starts, goals);
        if (ways.TryGet(key, out var kept) && kept.Holds(map, mayPass))
        {
            return kept.On(map);
        }

        var search = new WaySearch(map, mayPass, map.Turns);
        var way = search.Find(starts, goals);
        ways.Put(key, new KeptWay(map, way, search.RegionsLookedAt.Concat(goals.Select(g => g.Region.Number)), mayPass));
        return way;
    }

    private static ContentKey Key(FloorMap map, IReadOnlyList<FreePlace> starts, IReadOnlyList<FreePlace> goals)
    {
        var key = new ContentKey();
        key.Add(map.Mover.WidthMm);
        key.Add(map.Mover.HeightMm);
        key.Add(map.RegionCount);
        key.Add(starts.Count);
        foreach (var place in starts.Concat(goals))
        {
            key.Add(place.Region.Number);
            key.Add(place.Point.X);
            key.Add(place.Point.Y);
        }

        return key;
    }

    private sealed class KeptWay
    {
        private readonly List<Coordinate>? points;
        private readonly List<int> gates;
        private readonly int start;
        private readonly List<(int Region, FloorMesh Mesh, ContentKey Gates)> floors;

        public KeptWay(FloorMap map, Way? way, IEnumerable<int> regions, Func<Opening, bool>? mayPass)
        {
            points = way?.Points;
            gates = way?.Gates.ConvertAll(g => g.Number) ?? [];
            start = map.NumberOf(way?.StartRoom);
            floors = [.. regions.Distinct().Select(r => (r, map.Region(r).Mesh, GatesOf(map, r, mayPass)))];
        }

        public bool Holds(FloorMap map, Func<Opening, bool>? mayPass) =>
            floors.TrueForAll(f => ReferenceEquals(map.Region(f.Region).Mesh, f.Mesh) && GatesOf(map, f.Region, mayPass).Equals(f.Gates));

        public Way? On(FloorMap map) => points is null
            ? null
            : new Way(points, gates.ConvertAll(g => map.Passages[g]), map.Region(start).Room);

        private static ContentKey GatesOf(FloorMap map, int number, Func<Opening, bool>? mayPass)
        {
            var key = new ContentKey();
            foreach (var passage in map.Region(number).Passages)
            {
                key.Add(passage.Number);
                key.Add([passage.Point(passage.Low, passage.Near), passage.Point(passage.High, passage.Far)]);
                key.Add(passage.Gate);
                key.Add(map.NumberOf(passage.Opening.RoomA));
                key.Add(map.NumberOf(passage.Opening.RoomB));
                key.Add(map.NumberOf(passage.AtNear));
                key.Add(mayPass is null || mayPass(passage.Opening) ? 1 : 0);
            }

            return key;
        }
    }
}
