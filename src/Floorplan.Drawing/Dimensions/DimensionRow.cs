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
    /// <summary>
    /// Each stretch from stop to stop. Places are rounded from the view's zero, so that chains add up as printed and agree with each other.
    /// </summary>
    Chain,

    /// <summary>First to last only, rounded as one length. One that begins at the view's zero agrees with the chains.</summary>
    Overall,

    /// <summary>Distances from the first stop, which carries the origin circle, each rounded by itself.</summary>
    Running,
}
