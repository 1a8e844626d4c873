using Floorplan.Model.Openings;
using QuikGraph;

namespace Floorplan.Model.Graphs;

/// <summary>One step from a place to the next: through an opening from room to room, or by a leg of a flow from thing to thing.</summary>
/// <param name="Source">Id of the place that it starts at.</param>
/// <param name="Target">Id of the place that it ends at.</param>
/// <param name="Opening">What it goes through; null where it is no opening.</param>
public sealed record Link(string Source, string Target, Opening? Opening = null) : IEdge<string>;
