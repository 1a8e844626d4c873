using Floorplan.Language.Quantities;

namespace Floorplan.Model.Shells.Containers;

/// <summary>
/// Sizes of the series 1 freight containers, in millimetres. Outside and inside lengths and widths: ISO 668:2013
/// table, read in a public copy (F). Inside height is outside height less 241 mm, the rule behind that table (D).
/// Door openings: 7 ft 6 in wide, 7 ft 5 in high (standard) and 8 ft 5 in high (high-cube), read in a public copy (F).
/// </summary>
public static class ContainerSizes
{
    /// <summary>8 ft in ISO 668.</summary>
    private const double Width = 2438;

    /// <summary>8 ft 6 in.</summary>
    private const double Standard = 2591;

    /// <summary>9 ft 6 in.</summary>
    private const double HighCube = 2896;

    private const double InsideWidth = 2330;
    private const double HeightLost = 241;
    private const double DoorWidth = 2286;
    private const double StandardDoor = 2261;
    private const double HighCubeDoor = 2566;
    private const string Table = "ISO 668:2013 (F)";

    public static IReadOnlyList<ContainerSize> All { get; } =
    [
        Size(10, false, 2991, 2802, "length and width ISO 668:2013 class 1D (F); 8 ft 6 in high and its door are trade sizes (M)"),
        Size(20, false, 6058, 5867, Table),
        Size(
            20, true, 6058, 5867,
            "length and width ISO 668:2013 (F); the height is not in that edition, inside height by the 241 mm rule (D)"),
        Size(40, false, 12192, 11998, Table),
        Size(40, true, 12192, 11998, Table),
        Size(45, true, 13716, 13542, Table),
    ];

    /// <summary>Null when there is no such container.</summary>
    public static ContainerSize? Find(int feet, bool highCube) => All.FirstOrDefault(s => s.Feet == feet && s.HighCube == highCube);

    private static ContainerSize Size(int feet, bool highCube, double outside, double inside, string origin)
    {
        double height = highCube ? HighCube : Standard;
        return new ContainerSize(
            feet,
            highCube,
            Length.FromMillimetres(outside),
            Length.FromMillimetres(Width),
            Length.FromMillimetres(height),
            Length.FromMillimetres(inside),
            Length.FromMillimetres(InsideWidth),
            Length.FromMillimetres(height - HeightLost),
            Length.FromMillimetres(DoorWidth),
            Length.FromMillimetres(highCube ? HighCubeDoor : StandardDoor),
            origin);
    }
}
