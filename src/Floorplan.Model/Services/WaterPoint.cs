using Floorplan.Language.Quantities;
using Floorplan.Language.Words.Terms;

namespace Floorplan.Model.Services;

/// <summary>A water point.</summary>
public sealed record WaterPoint : RatedPoint, IGuardedPoint, ISizedPoint
{
    public bool Cold { get; init; }

    public bool Hot { get; init; }

    /// <summary>Of the pipe; null when not said.</summary>
    public Length? Size { get; init; }

    public IReadOnlyList<BackflowGuard> Guards { get; init; } = [];

    public override string Kind => "water";

    public override string Noun => "water point";

    public override IEnumerable<string> Terms
        => [.. Cold ? ["cold"] : Array.Empty<string>(), .. Hot ? ["hot"] : Array.Empty<string>(), .. ((IGuardedPoint)this).GuardWords];
}
