using Floorplan.Language.Quantities;

namespace Floorplan.Model.Services;

/// <summary>A service point with ratings.</summary>
public abstract record RatedPoint : ServicePoint
{
    /// <summary>As written, such as <c>100 A</c>, <c>230 V</c>.</summary>
    public IReadOnlyList<Quantity> Ratings { get; init; } = [];
}
