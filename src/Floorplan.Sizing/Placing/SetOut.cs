using Floorplan.Language.Quantities;

namespace Floorplan.Sizing.Placing;

/// <summary>How a thing is set out along an axis of the plan.</summary>
/// <param name="Face">The finished face that it is measured from.</param>
/// <param name="Edge">Its near edge.</param>
public readonly record struct SetOut(Length Face, Length Edge)
{
    /// <summary>Exact.</summary>
    public Length Distance => Edge - Face;
}
