using Floorplan.Tests.Checks.Support;
using static System.FormattableString;

namespace Floorplan.Tests.Checks.Edges;

internal static class PowerEdges
{
    private const double Foot = 304.8;

    public static IReadOnlyList<Edge> All { get; } =
    [
        new("panel-space", "3 ft before 0 to 150 V to ground: 29 CFR 1910.303 Table S-1, as WAC 296-24-95703; code us", 3 * Foot, 913, mm => Panel(mm, "us"), "p1", "tank") { Set = ("900 mm", "1000 mm") },
        new("panel-space", "3 ft, as advice: code eu", 3 * Foot, 913, mm => Panel(mm, "eu"), "p1", "tank") { Set = ("900 mm", "1000 mm") },
    ];

    private static string Panel(double free, string code) => Invariant($"""
        plan "Edge"
          units metric
          code {code}
        shell shed 6000 x 3000 x 2600
        room pack "Packing" dry from west to east
        door d1 pack to outside, south wall, 300 from west, 1000 x 2050, swings out
        panel p1 in pack, east wall, 1500 from south, 100 A 230 V single-phase
        station tank "Brine tank" in pack
          size 1200 x 900 x 900
          place {free:0.####} from east, 1100 from south
        """);
}
