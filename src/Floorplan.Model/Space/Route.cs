using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space;

/// <summary>A real shortest way over free floor.</summary>
/// <param name="Path">In plan millimetres, at least two points.</param>
/// <param name="Rooms">Rooms walked through in order, null for outside; no two neighbours the same.</param>
/// <param name="Openings">Openings passed in order; the route of a leg also names the openings that it starts and ends at.</param>
public sealed record Route(LineString Path, IReadOnlyList<Room?> Rooms, IReadOnlyList<Opening> Openings)
{
    public double LengthMm => Path.Length;
}
