using Floorplan.Language.Quantities;

namespace Floorplan.Model.Shells.Sheds;

/// <summary>Usual build of a small shed where the plan does not say otherwise.</summary>
public static class ShedBuild
{
    public const string PostOrigin = "corner post as wide as the wall, own assumption";
    public const string WallPostOrigin = "wall post as wide as the wall at the spacing that the plan gives, own assumption";
    public const string PlateOrigin = "two 38 mm plates at the eaves, common practice";

    /// <summary>Framed wall with cladding; own assumption.</summary>
    public static Length Wall { get; } = Length.FromMillimetres(100);

    public static Length TopPlate { get; } = Length.FromMillimetres(76);
}
