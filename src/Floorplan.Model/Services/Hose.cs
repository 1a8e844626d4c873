using Floorplan.Language.Quantities;
using Floorplan.Language.Words.Terms;

namespace Floorplan.Model.Services;

/// <summary>A hose, on a water point or on a wall.</summary>
public sealed record Hose : RatedPoint, IGuardedPoint
{
    /// <summary>Null when not said.</summary>
    public Length? Length { get; init; }

    /// <summary>The id of the water point that it hangs on; null when not said.</summary>
    public string? OnId { get; init; }

    public IReadOnlyList<BackflowGuard> Guards { get; init; } = [];

    public override string Kind => "hose";

    public override IEnumerable<string> Terms => ((IGuardedPoint)this).GuardWords;
}
