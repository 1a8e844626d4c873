using Floorplan.Language.Quantities;

namespace Floorplan.Model.Shells.Containers;

/// <summary>Sizes of the steel that holds a container up. Boxes differ: measure the real one before cutting.</summary>
internal static class ContainerSteel
{
    public const string CastingOrigin = "ISO 1161, corner fitting 178 x 162 x 118 mm (F)";
    public const string PostOrigin = "as wide as the corner fitting, own assumption";
    public const string DoorPostOrigin =
        "what ISO 668 leaves beside the door opening (D); seen on the side wall 165 mm, typical builder's drawing (M)";
    public const string RailOrigin = "typical builder's drawing: top rail 60 mm square tube, bottom rail 162 mm channel (M)";
    public const string HeaderOrigin = "what ISO 668 leaves above the door opening (D)";
    public const string SillOrigin = "from the underside to the floor (D)";
    public const string FrontOrigin = "as the side rails, own assumption";
    public const string SecondPostOrigin = "boxes of 45 ft have a second set of posts at the 40 ft places (F)";

    public static Length CastingLength { get; } = Length.FromMillimetres(178);

    public static Length CastingWidth { get; } = Length.FromMillimetres(162);

    public static Length CastingHeight { get; } = Length.FromMillimetres(118);

    /// <summary>
    /// From the outside face, as all steel is. The doors stand within this depth: at the door end of a 40 ft box ISO 668 leaves
    /// 194 - 54 = 140 mm between outside and least inside, so the post sticks out 25 mm behind the bare end and a lining of more covers it.
    /// A real box is up to 34 mm longer inside (12 032 mm, builders' specifications, F); the 50 mm that <c>cuts-frame</c> asks for
    /// beside a post is more than that.
    /// </summary>
    public static Length DoorPostOnSide { get; } = Length.FromMillimetres(165);

    public static Length TopRail { get; } = Length.FromMillimetres(60);

    public static Length BottomRail { get; } = Length.FromMillimetres(162);

    /// <summary>Fittings stand 6 mm above the roof rails (builder's specification of a 20 ft box, F).</summary>
    public static Length FittingAboveRoof { get; } = Length.FromMillimetres(6);

    /// <summary>
    /// Underside of the corner fittings to the top of the floor: 14.5 mm under the cross members (F), cross members
    /// 122 mm (M), plywood 28 mm (F).
    /// </summary>
    public static Length FloorTop { get; } = Length.FromMillimetres(14.5 + 122 + 28);

    /// <summary>Half of what ISO 668 leaves between outside and inside width; the closed end is taken as thick (own assumption).</summary>
    public static Length Wall(ContainerSize size) => (size.OutsideWidth - size.InsideWidth) / 2;

    /// <summary>The 40 ft places of a 45 ft box: (13 716 - 12 192) / 2 from each end.</summary>
    public static Length SecondPostFromEnd { get; } = Length.FromMillimetres((13716 - 12192) / 2.0);
}
