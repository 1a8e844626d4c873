using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space.Gaps;

/// <summary>A gap between two fixed things.</summary>
/// <param name="At">Its middle.</param>
/// <param name="Left">Station on the left of the way; null is a wall.</param>
/// <param name="Right">Station on the right of the way; null is a wall.</param>
internal readonly record struct Gap(double Width, Coordinate At, Station? Left, Station? Right);
