using Floorplan.Language.Quantities;

namespace Floorplan.Model.Shells.Containers;

/// <summary>One size of container: true outside, least inside and least door opening, with where the figures come from.</summary>
public sealed record ContainerSize(
    int Feet,
    bool HighCube,
    Length OutsideLength,
    Length OutsideWidth,
    Length OutsideHeight,
    Length InsideLength,
    Length InsideWidth,
    Length InsideHeight,
    Length DoorWidth,
    Length DoorHeight,
    string Origin)
{
    public string Name => FormattableString.Invariant($"{Feet} ft {(HighCube ? "high-cube" : "standard")} container");
}
