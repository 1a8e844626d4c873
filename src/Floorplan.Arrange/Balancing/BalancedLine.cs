namespace Floorplan.Arrange.Balancing;

/// <summary>Tasks of a line shared out to places of work so that none takes longer than the cycle.</summary>
/// <param name="PlaceOf">By task: its place, from 0, in the order of the line.</param>
/// <param name="Places">How many there are.</param>
/// <param name="AtLeast">No way takes fewer: equal to <paramref name="Places"/> where that is proven to be the fewest.</param>
public sealed record BalancedLine(IReadOnlyList<int> PlaceOf, int Places, int AtLeast)
{
    public bool IsFewest => Places == AtLeast;
}
