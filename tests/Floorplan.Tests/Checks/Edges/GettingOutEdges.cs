using Floorplan.Tests.Checks.Support;
using static System.FormattableString;

namespace Floorplan.Tests.Checks.Edges;

internal static class GettingOutEdges
{
    private const double Foot = 304.8;
    private const double Inch = 25.4;

    /// <summary>
    /// Half a person, from whose middle walks are measured, and how far outside a door the way ends (own assumptions of the program).
    /// </summary>
    private const double HalfPerson = 225;
    private const double StepOutside = HalfPerson + 300;
    private const double Wall = 100;

    public static IReadOnlyList<Edge> All { get; } =
    [
        new(
            "aisle-too-narrow", "36 in: FDA/CFP Food Establishment Plan Review Guide 2000, Part 6; code us", 36 * Inch, 913, mm
                => Aisle(mm, "us"), "table", "tank") { Set = ("800 mm", "1000 mm") },
        new(
            "aisle-too-narrow", "800 mm preferred: ISO 14122-2; code eu", 800, 799, mm
                => Aisle(mm, "eu"), "table", "tank") { Set = ("700 mm", "900 mm") },
        new("aisle-too-narrow", "600 mm at least: ISO 14122-2; code eu", 600, 599, mm => Aisle(mm, "eu"), "table", "tank") {
            Lighter = 800, Set = ("500 mm", "700 mm") },
        new(
            "aisle-too-narrow", "28 in at all points of a way out: 29 CFR 1910.36(g)(2); code us", 28 * Inch, 710, mm
                => Aisle(mm, "us"), "table", "tank") { Lighter = 914 },
        new("exit-too-far", "75 ft to the only exit: IBC 2021, 1006.2.1 (from memory); code eu", 75 * Foot, (75 * Foot)
            + 2, mm => OneExit(mm, "eu"), "pack") { Set = ("23 m", "20 m"), Within = 1 },
        new("exit-too-far", "75 ft to the only exit; code us", 75 * Foot, (75 * Foot)
            + 2, mm => OneExit(mm, "us"), "pack") { Lighter = 15_240, Set = ("23 m", "20 m"), Within = 1 },
        new(
            "exit-too-far", "50 ft to the only exit: NFPA 101, 2021, Table 40.2.5 (from memory, to be verified); code us", 50 * Foot,
            (50 * Foot) + 2, mm => OneExit(mm, "us"), "pack") { Set = ("16 m", "15 m"), Within = 1 },
        new("exit-too-far", "200 ft to the nearest of several: IBC 2021, Table 1017.2", 200 * Foot, (200 * Foot)
            + 2, mm => TwoExits(mm, "eu"), "pack") { Set = ("62 m", "50 m"), Within = 1 },
        new(
            "one-exit-only", "49 people: IBC 2021, 1006.2.1 (from memory), each with 100 sq ft: IBC Table 1004.5 (secondary copy)", 49, 50,
            Crowd, "d1") { Set = ("60", "40") },
        new("one-exit-only", "a crew of 49: IBC 2021, 1006.2.1 (from memory)", 49, 50, Crew, "d1") { Set = ("60", "40") },
        new(
            "exit-door-narrow", "32 in clear: NFPA 101, 7.2.1.2.3; code us", 32 * Inch, 812, mm
                => Exit(mm, "us", 6000), "d1") { Set = ("800 mm", "900 mm") },
        new(
            "exit-door-narrow", "28 in of a way out: 29 CFR 1910.36(g)(2); code us, a room of at most 70 sq ft", 28 * Inch, 710, mm
                => Exit(mm, "us", 2000), "d1"),
        new("exit-door-narrow", "28 in of a way out; code us", 28 * Inch, 710, mm => Exit(mm, "us", 6000), "d1") { Lighter = 32 * Inch },
        new("exit-door-narrow", "600 mm: ISO 14122-2; code eu", 600, 599, mm => Exit(mm, "eu", 6000), "d1") { Set = ("500 mm", "700 mm") },
        new(
            "step-at-door", "a rise of 9.5 in: 29 CFR 1910.25 (secondary copy), without steps", 9.5 * Inch, 242, mm
                => Raised(mm, ""), "d1") { Set = ("250 mm", "200 mm") },
        new(
            "step-at-door", "a rise of 9.5 in: 29 CFR 1910.25 (secondary copy), 3 steps", 9.5 * Inch, 242, mm
                => Raised(3 * mm, ", steps 3"), "d1") { Set = ("250 mm", "200 mm") },
    ];

    private static string Crowd(double people) => Invariant($"""
        plan "Edge"
          units metric
          code eu
        shell shed {(people * 10 * Foot) + 200:0.###} x {(10 * Foot) + 200} x 3000
        room pack "Packing" dry from west to east
        door d1 pack to outside, south wall, centred, 1200 x 2050, swings out
        """);

    private static string Crew(double people) => Invariant($"""
        plan "Edge"
          units metric
          code eu
        shell shed 9000 x 5000 x 3000
        room pack "Packing" dry from west to east
        station bench "Bench" in pack, 1800 x 600 x 900, against north wall, centred
        door d1 pack to outside, south wall, centred, 1200 x 2050, swings out
        day
          target 120 fish/h for 5 h
          crew   pack {people - 9}, bench 9
        """);

    private static string Exit(double wide, string code, double length) => Invariant($"""
        plan "Edge"
          units metric
          code {code}
        shell shed {length} x 2800 x 2800
        room cut "Cutting" clean from west to east
        door d1 cut to outside, west wall, centred, {wide:0.####} x 2050, swings out
        """);

    private static string Raised(double ground, string steps) => Invariant($"""
        plan "Edge"
          units metric
          code eu
        shell container 20 ft high-cube
          ground {ground:0.####} below floor
        room cut "Cutting" clean from west to east
        door d1 cut to outside, south wall, 700 from west, 900 x 2050, swings out{steps}
        """);

    private static string Aisle(double wide, string code) => Invariant($"""
        plan "Edge"
          units metric
          code {code}
        shell shed 6000 x 2800 x 2800
        room cut "Cutting" clean from west to east
        door d1 cut to outside, west wall, 1000 from north, 900 x 2050, swings out
        station tank "Brine tank" in cut
          size   1400 x {2600 - 600 - wide:0.####} x 900
          place  against north wall, 2000 from west
        station table "Cutting table" in cut
          size   1400 x 600 x 900
          place  against south wall, 2000 from west
        station pack "Packing table" in cut
          size   600 x 900 x 900
          place  corner north-east
          worker west
        flow people "Packer"
          outside -> d1 -> pack
        """);

    /// <summary>From the middle of the east wall of a narrow room, straight through the door in the west wall.</summary>
    private static string OneExit(double walk, string code) => Shed(walk, 225, code, """
        shell shed {0} x 1100 x 2800
        door d1 pack to outside, west wall, centred, 800 x 2050, swings out
        """);

    private static string TwoExits(double walk, string code) => Shed(walk, 700, code, """
        shell shed {0} x 2600 x 2800
        door d1 pack to outside, west wall, 100 from south, 800 x 2050, swings out
        door d2 pack to outside, west wall, 100 from north, 800 x 2050, swings out
        """);

    /// <summary>
    /// A walk that ends at the outer face of the door, and whose straight line goes on to one step outside, aside from where
    /// it starts; so the length along the shed is walk / sqrt(1 + (aside / whole)^2), with the whole way for the length of both.
    /// </summary>
    private static string Shed(double walk, double aside, string code, string shell)
    {
        double slant = aside / (walk + StepOutside);
        double along = walk / Math.Sqrt(1 + (slant * slant));
        string length = Invariant($"{along + HalfPerson + Wall:0.###}");
        return $"""
            plan "Edge"
              units metric
              code {code}
            {shell.Replace("{0}", length, StringComparison.Ordinal)}
            room pack "Packing" dry from west to east
            """;
    }
}
