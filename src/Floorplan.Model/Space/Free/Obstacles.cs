using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;
using NetTopologySuite.Index.Strtree;

namespace Floorplan.Model.Space.Free;

/// <summary>All stations by place: their convex outlines, found by box.</summary>
internal sealed class Obstacles
{
    private readonly STRtree<Obstacle> index = new();

    public Obstacles(IReadOnlyList<Station> stations)
    {
        foreach (var station in stations)
        {
            var ring = ConvexRing.Of(station.Footprint);
            if (ring.Count > 0)
            {
                var box = new Envelope();
                ring.ForEach(box.ExpandToInclude);
                index.Insert(box, new Obstacle(station, ring, box));
            }
        }

        index.Build();
    }

    public IEnumerable<Obstacle> Near(Envelope box) => index.IsEmpty ? [] : index.Query(box);
}

internal sealed record Obstacle(Station Station, List<Coordinate> Ring, Envelope Box)
{
    /// <summary>In the way of something that tall: it starts below its top.</summary>
    public bool Blocks(double heightMm) => Station.Bottom.Millimetres < heightMm;
}
