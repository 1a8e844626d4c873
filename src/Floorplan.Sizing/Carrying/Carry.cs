using Floorplan.Model.Flows;
using Floorplan.Model.Space;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Carrying;

/// <summary>One carry by hand, from where a load is taken up to where it is set down; doors on the way do not end it.</summary>
/// <param name="Legs">In order, one at least, each with a way.</param>
/// <param name="Length">Of all legs, in mm; of one leg it is that leg's own figure.</param>
public sealed record Carry(IReadOnlyList<LegRoute> Legs, Figure Length)
{
    public Flow Flow => Legs[0].Flow;

    public Stop From => Legs[0].Leg.From;

    public Stop To => Legs[^1].Leg.To;
}
