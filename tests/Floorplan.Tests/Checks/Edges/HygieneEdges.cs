using Floorplan.Tests.Checks.Support;
using static System.FormattableString;

namespace Floorplan.Tests.Checks.Edges;

internal static class HygieneEdges
{
    public static IReadOnlyList<Edge> All { get; } =
    [
        new("doubles-back", "a fifth of the way (own assumption)", 20, 20.1, Back, "c", "b") { Set = ("25 %", "15 %") },
    ];

    /// <summary>A walk of 7.5 m in all along one wall: 3 m forward, then the share of it back, then forward again.</summary>
    private static string Back(double percent)
    {
        double back = 7500 * percent / 100;
        return Invariant($"""
            plan "Edge"
              units metric
              code eu
            shell shed 10 m x 3 m x 2.5 m
            room wash "Wash and pack" clean from west to east
            door d1 wash to outside, south wall, centred, 900 x 2050, swings out
            {Table("a", 0)}
            {Table("b", 3000 - back)}
            {Table("c", 3000)}
            {Table("d", 7500 - (2 * back))}
            flow product
              a -> c -> b -> d by hand
            """);
    }

    private static string Table(string name, double west) => Invariant($"""
        station {name} in wash
          size   900 x 600 x 900
          place  against north wall, {west} from west
          worker south
        """);
}
