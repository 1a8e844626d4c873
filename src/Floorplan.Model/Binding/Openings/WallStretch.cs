using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Binding.Openings;

/// <summary>A straight stretch of wall that an opening can be cut in.</summary>
/// <param name="Side">The side that it is on, seen from the first room.</param>
/// <param name="Near">Place of the first room's finished face.</param>
/// <param name="Far">Place of the other room's finished face, or of the shell's outside face.</param>
/// <param name="From">West or south end.</param>
/// <param name="To">East or north end.</param>
internal readonly record struct WallStretch(Side Side, Length Near, Length Far, Length From, Length To)
{
    public Length Run => To - From;

    public PlanPoint Middle(Length along) => Point(along, (Near + Far) / 2);

    public PlanPoint Point(Length along, Length across)
        => Side.RunsEastWest() ? new PlanPoint(along, across) : new PlanPoint(across, along);

    /// <summary>The hole between two places along the wall, through its whole thickness.</summary>
    public Box Through(Length from, Length to)
    {
        var low = Length.Min(Near, Far);
        var high = Length.Max(Near, Far);
        return Side.RunsEastWest() ? new Box(from, low, to, high) : new Box(low, from, high, to);
    }
}
