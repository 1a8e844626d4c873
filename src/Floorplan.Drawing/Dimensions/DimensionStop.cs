using Floorplan.Language.Quantities;

namespace Floorplan.Drawing.Dimensions;

/// <summary>One place that a chain measures at.</summary>
/// <param name="Along">Plan coordinate along the row (x for rows above and below, y for rows left and right).</param>
/// <param name="From">Plan coordinate across it, where the extension line begins; null at the edge of the view.</param>
public readonly record struct DimensionStop(Length Along, Length? From = null);
