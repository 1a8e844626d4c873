using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space;

/// <summary>Two legs' routes share floor: they cross at a point or run together for a stretch.</summary>
/// <param name="At">Where it is best marked.</param>
/// <param name="SharedMm">How far they run together; 0 for a plain crossing.</param>
public sealed record Meeting(LegRoute First, LegRoute Second, Coordinate At, double SharedMm);
