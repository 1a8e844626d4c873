using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model.Binding.Placing;

namespace Floorplan.Model.Binding.Openings;

/// <summary>Where an opening may go: stretches on one side, longest first.</summary>
internal sealed record OpeningWall(Side Side, IReadOnlyList<WallStretch> Stretches, Length Width)
{
    /// <summary>The axis that the wall runs along.</summary>
    public Axis Along => Side is Side.North or Side.South ? Axis.WestEast : Axis.SouthNorth;
}
