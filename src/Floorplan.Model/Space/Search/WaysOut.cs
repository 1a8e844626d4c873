using Floorplan.Model.Openings;
using Floorplan.Model.Space.Free;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space.Search;

/// <summary>
/// The shortest ways out from everywhere on a map. One search starts at all exits at once and goes over all floor, so that
/// asking for many places, or for places without a way, costs no more than asking for one.
/// </summary>
internal sealed class WaysOut
{
    private readonly WaySearch search;
    private readonly Turns turns = new();
    private readonly List<int>?[]?[] seen;

    /// <param name="isExit">Inner openings are all open; the outside is reached only through an opening that it takes.</param>
    public WaysOut(FloorMap map, Func<Opening, bool> isExit)
    {
        (Map, IsExit) = (map, isExit);
        List<FreePlace> exits = [.. map.Open.Where(p => p.LeadsOut && isExit(p.Opening)).Select(map.JustOutside).OfType<FreePlace>()];
        HasExit = exits.Count > 0;
        seen = new List<int>?[]?[map.RegionCount];
        search = new WaySearch(map, o => (o.RoomA is not null && o.RoomB is not null) || isExit(o), turns);
        search.Flood(exits, number =>
        {
            var node = search.Node(number);
            var mesh = map.Region(node.Region).Mesh;
            ((seen[node.Region] ??= new List<int>?[mesh.CellCount])[mesh.Cell[node.Edge]] ??= []).Add(number);
        });
    }

    public FloorMap Map { get; }

    public Func<Opening, bool> IsExit { get; }

    public bool HasExit { get; }

    public bool Reaches(FreeRegion region, int cell) => Seen(region, cell) is not null;

    /// <summary>Length of the shortest known way from a corner; infinite when it has none.</summary>
    public double FromCorner(FreeRegion region, int corner) => turns.Distance(region.FirstCorner + corner);

    /// <summary>Length of the shortest way from a point of a cell, which must be in a room; infinite when it has none.</summary>
    public double From(FreeRegion region, int cell, Coordinate p) => Best(region, cell, p).Length;

    /// <summary>The shortest way out, or null.</summary>
    public Route? From(FreePlace place)
    {
        var best = (Length: double.PositiveInfinity, Number: -1);
        foreach (int cell in place.Cells)
        {
            var found = Best(place.Region, cell, place.Point);
            best = found.Length < best.Length ? found : best;
        }

        return best.Number < 0 ? null : Routes.Reverse(Routes.Of(search.WayTo(best.Number, place.Point)));
    }

    private (double Length, int Number) Best(FreeRegion region, int cell, Coordinate p)
    {
        var best = (Length: double.PositiveInfinity, Number: -1);
        foreach (int number in Seen(region, cell) ?? [])
        {
            if (search.Node(number).EndingAt(p) is { } node && node.Walked + node.Root.Distance(p) is var length && length < best.Length)
            {
                best = (length, number);
            }
        }

        return best;
    }

    private List<int>? Seen(FreeRegion region, int cell) => seen[region.Number]?[cell];
}
