using Floorplan.Model.Rooms;
using Floorplan.Model.Space.Free;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space.Search;

/// <summary>A shortest way: its corners, the gates that it crosses, and the room that it starts in (null is outside).</summary>
internal sealed record Way(List<Coordinate> Points, List<Passage> Gates, Room? StartRoom);
