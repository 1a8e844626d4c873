using Floorplan.Language.Syntax;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using Floorplan.Model.Space;
using NetTopologySuite.Geometries;

namespace Floorplan.Checks.Framework;

/// <summary>Directions from openings into rooms.</summary>
public static class Sides
{
    /// <summary>The way one walks when stepping through an opening into one of its two sides (null is outside).</summary>
    public static Side Into(Opening opening, Room? room) => room?.Id == opening.RoomA?.Id ? opening.Wall.Opposite() : opening.Wall;

    /// <summary>
    /// The floor in front of an opening on one side: as wide as the opening, <paramref name="depthMm"/> deep from the face of the wall;
    /// never thinner than what counts as touching, so that it stays an area.
    /// </summary>
    public static Polygon InFrontOf(Opening opening, Side into, double depthMm)
    {
        var reveal = opening.Reveal.EnvelopeInternal;
        double depth = Math.Max(depthMm, Touch.ToleranceMm);
        var front = into switch
        {
            Side.North => new Envelope(reveal.MinX, reveal.MaxX, reveal.MaxY, reveal.MaxY + depth),
            Side.South => new Envelope(reveal.MinX, reveal.MaxX, reveal.MinY - depth, reveal.MinY),
            Side.East => new Envelope(reveal.MaxX, reveal.MaxX + depth, reveal.MinY, reveal.MaxY),
            _ => new Envelope(reveal.MinX - depth, reveal.MinX, reveal.MinY, reveal.MaxY),
        };
        return (Polygon)Shape.Factory.ToGeometry(front);
    }
}
