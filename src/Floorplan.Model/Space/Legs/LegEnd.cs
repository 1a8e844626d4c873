using Floorplan.Model.Openings;
using Floorplan.Model.Space.Free;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space.Legs;

/// <summary>Where a walked leg can start or end.</summary>
/// <param name="Places">The places to choose from; the shortest way decides. Empty when there is none.</param>
/// <param name="Hands">Where the hands go on to from there (the middle of a hatch), or null.</param>
/// <param name="Opening">The opening that the stop is, or null.</param>
/// <param name="Fault">Why there is no place, as the end of a sentence; null when there is one.</param>
internal sealed record LegEnd(IReadOnlyList<FreePlace> Places, Coordinate? Hands, Opening? Opening, string? Fault);
