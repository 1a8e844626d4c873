using Floorplan.Language.Quantities;

namespace Floorplan.Model.Shells.Trailers;

/// <summary>Usual build of a box trailer where the plan does not say otherwise. Measure the real one before cutting.</summary>
public static class TrailerBuild
{
    public const string PostOrigin = "3 in corner post, common practice";
    public const string WallPostOrigin = "1 1/2 in wall post at the spacing that the plan gives, common practice";
    public const string RailOrigin = "3 in top rail and floor frame as bottom rail, common practice";
    public const string HeaderOrigin = "4 in header over the rear doors, own assumption";
    public const string ArchOrigin =
        "wheel arch 36 in for each axle, 9 in above the floor, axles 60 % of the length from the hitch, own assumption";

    public const string KnownArchOrigin = "wheel arch 36 in for each axle, 9 in above the floor, own assumption; axles where the plan says";

    /// <summary>Wall posts 1 in with skins inside and out; own assumption.</summary>
    public static Length Wall { get; } = Length.FromInches(1.5);

    /// <summary>Roof bows with skin; own assumption.</summary>
    public static Length Roof { get; } = Length.FromInches(2);

    /// <summary>Cross members 4 in and 3/4 in plywood; common practice.</summary>
    public static Length Floor { get; } = Length.FromInches(4.75);

    public static Length CornerPost { get; } = Length.FromInches(3);

    public static Length WallPost { get; } = Length.FromInches(1.5);

    public static Length TopRail { get; } = Length.FromInches(3);

    public static Length Header { get; } = Length.FromInches(4);

    public static Length ArchPerAxle { get; } = Length.FromInches(36);

    public static Length ArchAboveFloor { get; } = Length.FromInches(9);

    /// <summary>Middle of the axles from the hitch end, in hundredths of the length.</summary>
    public static int AxlePercentFromHitch => 60;
}
