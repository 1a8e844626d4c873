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
            "aisle-too-narrow", "36 in: FDA/CFP Food Establishment Plan Review Guide 2000, Part 6; retail in the US", 36 * Inch, 913, mm
                => Aisle(mm, "code us, plant retail"), "table", "tank") { Set = ("800 mm", "1000 mm") },
        new("aisle-too-narrow", "0.90 m of a way out: ASR A2.3, Germany, 2022", 900, 899, mm => Aisle(mm, "country de"), "table", "tank"),
        new("aisle-too-narrow", "750 mm of a way out: fire-risk guide, UK", 750, 749, mm => Aisle(mm, "country uk"), "table", "tank"),
        new("aisle-too-narrow", "600 mm that a large man passes through: ANSUR II and own assumption; code eu", 600, 599, mm
            => Aisle(mm, "code eu"), "table", "tank"),
        new(
            "aisle-too-narrow", "28 in at all points of a way out: 29 CFR 1910.36(g)(2); code us", 28 * Inch, 710, mm
                => Aisle(mm, "code us, plant exempt"), "table", "tank"),
        new("exit-too-far", "100 ft to the only exit, at most 30 people: IBC 2018, 1006.2.1, group B; code us", 100 * Foot, (100 * Foot)
            + 2, mm => OneExit(mm, "code us"), "pack") { Lighter = 15_240, Set = ("31 m", "20 m"), Within = 1 },
        new("exit-too-far", "75 ft to the only exit of more than 30 people: IBC 2018, 1006.2.1", 75 * Foot, (75 * Foot)
            + 2, mm => OneExit(mm, "code us") + "\nday\n  crew pack 31", "pack") { Lighter = 15_240, Set = ("23 m", "20 m"), Within = 1 },
        new("exit-too-far", "18 m where there is one way: fire-risk guide, UK", 18_000, 18_002, mm
            => OneExit(mm, "country uk"), "pack") { Set = ("19 m", "17 m"), Within = 1 },
        new("exit-too-far", "45 m where there are two: fire-risk guide, UK", 45_000, 45_002, mm
            => TwoExits(mm, "country uk"), "pack") { Set = ("46 m", "17 m"), Within = 1 },
        new("exit-too-far", "35 m as the crow flies, walked 1.5 times as far: ASR A2.3, Germany", 52_500, 52_502, mm
            => OneExit(mm, "country de"), "pack") { Set = ("53 m", "17 m"), Within = 1 },
        new(
            "exit-too-far", "50 ft to the only exit: NFPA 101, 2021, Table 40.2.5 (from memory, to be verified); code us", 50 * Foot,
            (50 * Foot) + 2, mm => OneExit(mm, "code us"), "pack") { Set = ("16 m", "15 m"), Within = 1 },
        new("exit-too-far", "200 ft to the nearest of several: IBC 2018, Table 1017.2; code us", 200 * Foot, (200 * Foot)
            + 2, mm => TwoExits(mm, "code us"), "pack") { Set = ("62 m", "50 m"), Within = 1 },
        new(
            "one-exit-only", "49 people: IBC 2018, 1006.2.1, each with 100 sq ft: Table 1004.5; code us", 49, 50,
            people => Crowd(people).With("code us"), "d1") { Set = ("60", "40") },
        new("one-exit-only", "a crew of 49: IBC 2018, 1006.2.1", 49, 50, people => Crew(people).With("code us"), "d1") {
            Set = ("60", "40") },
        new("one-exit-only", "a crew of 60: Approved Document B, England (from memory)", 60, 61, people
            => Crew(people).With("country uk"), "d1") { Set = ("65", "40") },
        new(
            "exit-door-narrow", "32 in clear: IBC 2018, 1010.1.1; code us", 32 * Inch, 812, mm
                => Exit(mm, "code us", 6000), "d1") { Set = ("800 mm", "900 mm") },
        new(
            "exit-door-narrow", "28 in of a way out: 29 CFR 1910.36(g)(2); code us, a closet of less than 10 sq ft", 28 * Inch, 710, mm
                => Closet(mm), "d1"),
        new("exit-door-narrow", "28 in of a way out; code us", 28 * Inch, 710, mm => Exit(mm, "code us", 6000), "d1") {
            Lighter = 32 * Inch },
        new("exit-door-narrow", "600 mm that a large man passes through: ANSUR II and own assumption; code eu", 600, 599, mm
            => Exit(mm, "code eu", 6000), "d1") { Set = ("500 mm", "700 mm") },
        new("exit-door-narrow", "0.80 m for at most 5 people: ASR A2.3, Germany, 2022", 800, 799, mm
            => Exit(mm, "country de", 6000), "d1") { Set = ("750 mm", "850 mm") },
        new("exit-door-narrow", "0.90 m for at most 50 people: ASR A2.3, Germany, 2022", 900, 899, mm
            => Exit(mm, "country de", 6000) + "\nday\n  crew cut 6", "d1") { Set = ("750 mm", "950 mm") },
        new("exit-door-narrow", "750 mm: fire-risk guide, UK", 750, 749, mm
            => Exit(mm, "country uk", 6000), "d1") { Set = ("700 mm", "850 mm") },
        new("step-at-door", "a rise of 9.5 in: 29 CFR 1910.25(c); code us", 9.5 * Inch, 242, mm
            => Raised(mm, "").With("code us"), "d1") { Lighter = 177.8, Set = ("250 mm", "200 mm") },
        new("step-at-door", "a rise of 7 in, as a note: IBC 2018, 1003.5, one step; code us", 7 * Inch, 178.8, mm
            => Raised(mm, "").With("code us"), "d1") { Set = ("250 mm", "150 mm") },
        new("step-at-door", "a rise of 225 mm: ISO 14122-3 with a going of 210 mm; code eu", 225, 226, mm
            => Raised(mm, ""), "d1") { Set = ("250 mm", "200 mm") },
        new("step-at-door", "a rise of 225 mm, common practice; code none", 225, 226, mm
            => Raised(mm, "").With("code none"), "d1") { Set = ("250 mm", "200 mm") },
        new("step-at-door", "a rise of 7 in, as a note: IBC 2018, 1011.5, 3 steps; code us", 7 * Inch, 178.8, mm
            => Raised(3 * mm, ", steps 3").With("code us"), "d1") { Set = ("250 mm", "150 mm") },
        new("step-at-door", "a drop of 1 m: ArbStättV annex 2.1, Germany", 1000, 1001, mm
            => Raised(mm, ", ramp").With("country de"), "d1") { Lighter = 500 },
        new("step-at-door", "a drop of 500 mm, as a note: ISO 14122-3", 500, 501, mm => Raised(mm, ", ramp"), "d1"),
        new("step-at-door", "stair rails from 4 risers: 29 CFR 1910.28(b)(11)", 3, 4, n
            => Raised(500, Invariant($", steps {n:0}")).With("code us"), "d1"),
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

    private static string Exit(double wide, string head, double length) => Invariant($"""
        plan "Edge"
          units metric
        shell shed {length} x 2800 x 2800
        room cut "Cutting" clean from west to east
        door d1 cut to outside, west wall, centred, {wide:0.####} x 2050, swings out
        """).With(head);

    /// <summary>A room of 900 x 900 mm.</summary>
    private static string Closet(double wide) => Invariant($"""
        plan "Edge"
          units metric
          code us
        shell shed 1100 x 1100 x 2800
          walls 100
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

    private static string Aisle(double wide, string head) => Invariant($"""
        plan "Edge"
          units metric
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
        """).With(head);

    /// <summary>From the middle of the east wall of a narrow room, straight through the door in the west wall.</summary>
    private static string OneExit(double walk, string head) => Shed(walk, 225, head, """
        shell shed {0} x 1100 x 2800
        door d1 pack to outside, west wall, centred, 800 x 2050, swings out
        """);

    private static string TwoExits(double walk, string head) => Shed(walk, 700, head, """
        shell shed {0} x 2600 x 2800
        door d1 pack to outside, west wall, 100 from south, 800 x 2050, swings out
        door d2 pack to outside, west wall, 100 from north, 800 x 2050, swings out
        """);

    /// <summary>
    /// A walk that ends at the outer face of the door, and whose straight line goes on to one step outside, aside from where
    /// it starts; so the length along the shed is walk / sqrt(1 + (aside / whole)^2), with the whole way for the length of both.
    /// </summary>
    private static string Shed(double walk, double aside, string head, string shell)
    {
        double slant = aside / (walk + StepOutside);
        double along = walk / Math.Sqrt(1 + (slant * slant));
        string length = Invariant($"{along + HalfPerson + Wall:0.###}");
        return $"""
            plan "Edge"
              units metric
            {shell.Replace("{0}", length, StringComparison.Ordinal)}
            room pack "Packing" dry from west to east
            """.With(head);
    }
}
