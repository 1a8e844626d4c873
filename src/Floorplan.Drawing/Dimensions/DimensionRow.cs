using Floorplan.Language.Syntax;

namespace Floorplan.Drawing.Dimensions;

/// <summary>One row of dimensions outside a view.</summary>
/// <param name="Side">The side of the view that it stands on.</param>
/// <param name="Stops">In any order; equal places are merged.</param>
/// <param name="FromEnd">A running row counts from its last stop: its datum is at the right or the upper end.</param>
public sealed record DimensionRow(
    Side Side, DimensionForm Form, IReadOnlyList<DimensionStop> Stops, string? Group = null, bool FromEnd = false);

public enum DimensionForm
{
    /// <summary>Each stretch from stop to stop.</summary>
    Chain,

    /// <summary>First to last only.</summary>
    Overall,

    /// <summary>Distances from the first stop, which carries the origin circle.</summary>
    Running,
}
