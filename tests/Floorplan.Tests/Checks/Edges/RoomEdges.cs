using Floorplan.Tests.Checks.Support;
using static System.FormattableString;

namespace Floorplan.Tests.Checks.Edges;

/// <summary>Heights and places are set out to 1 mm, so the nearest value past a limit is 2 mm from it.</summary>
internal static class RoomEdges
{
    private const double Inch = 25.4;

    public static IReadOnlyList<Edge> All { get; } =
    [
        new(
            "headroom", "ceiling of 7 ft 6 in: 29 CFR 1910.36(g)(1); code us", 90 * Inch, 2284, mm
                => Shed("us", mm), "one") { Set = ("2200 mm", "2400 mm") },
        new(
            "headroom", "ceiling of 2100 mm, as a note: ASR A1.8, Germany", 2100, 2098, mm
                => Shed("eu", mm).With("country de"), "one") { Set = ("2000 mm", "2200 mm") },
        new(
            "headroom", "1950 mm, a tall man in boots and helmet: ANSUR II, 1870 mm, and own assumption", 1950, 1948, mm
                => Shed("eu", mm).Replace("900 x 2000", "900 x 1800", StringComparison.Ordinal), "one"),
        new(
            "headroom", "6 ft 8 in under what hangs: 29 CFR 1910.36(g)(1); code us", 80 * Inch, 2030, mm
                => Shed("us", 2600, Hood(mm)), "hood"),
        new(
            "door-blocked", "600 mm in front of a doorway: ISO 14122-2", 600, 598, mm
                => Shed("eu", 2600, Tank(mm)), "d1", "tank") { Set = ("500 mm", "700 mm") },
        new(
            "room-too-small", "11 m3 for each of two on 10 m2: UK code of practice L24, regulation 10", 11, 10.99, each
                => Crew(each * 2 / 10).With("country uk"), "one") { Set = ("10 m3", "12 m3") },
        new("clear-space-blocked", "1200 mm that the plan asks for", 1200, 1198, mm => Shed("eu", 2600, Kettle(mm)), "kettle", "tank"),
    ];

    private static string Shed(string code, double eaves, string more = "") => Invariant($"""
        plan "Edge"
          units metric
          code {code}
        shell shed 6000 x 3200 x {eaves}
        room one "One" clean from west to east
        door d1 one to outside, west wall, 1000 from south, 900 x 2000, swings out
        station bench "Bench" in one
          size 1500 x 600 x 900
          place corner north-east
          worker south
        flow people
          outside -> d1 -> bench
        {more}
        """);

    private static string Crew(double eavesMetres) => Invariant($"""
        plan "Edge"
          units metric
          code none
        shell shed 4200 x 2700 x {eavesMetres * 1000:0.####}
        room one "One" clean from west to east
        door d1 one to outside, west wall, 1000 from south, 900 x 2000, swings out
        day
          crew one 2
        """);

    private static string Hood(double underside) => Invariant($"""
        station hood "Hood" in one
          size  600 x 2400 x 200
          place 2000 from west, 300 from south
          hung, underside {underside}
        """);

    private static string Tank(double fromDoor) => Invariant($"""
        station tank "Holding tank" in one
          size  600 x 800 x 800
          place {fromDoor} from west, 1050 from south
        """);

    private static string Kettle(double free) => Invariant($"""
        station kettle "Kettle" in one
          size  800 x 800 x 1000
          place against north wall, 2000 from west
          clear south 1200 "tipping"
        station tank "Holding tank" in one
          size  800 x 300 x 800
          place 2000 from west, south of kettle gap {free}
        """);
}
