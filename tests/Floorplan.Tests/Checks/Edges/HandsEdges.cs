using Floorplan.Tests.Checks.Support;
using static System.FormattableString;

namespace Floorplan.Tests.Checks.Edges;

/// <summary>
/// Body sizes are ANSUR II percentiles (Gordon and others, NATICK/TR-15/007, 2014), computed from the public data of 4082 men and 1986
/// women.
/// </summary>
internal static class HandsEdges
{
    private const string Head = """
        plan "Edge"
          units metric
          code eu
        """;

    public static IReadOnlyList<Edge> All { get; } =
    [
        new(
            "out-of-reach", "thumb-tip reach of a 5th-percentile woman 674 mm (ANSUR II), over a bench", 674, 675, mm
                => Bench(mm), "bench") { Set = ("700 mm", "600 mm") },
        new(
            "out-of-reach", "thumb-tip reach of a 95th-percentile man 886 mm (ANSUR II), over a bench", 886, 887, mm
                => Bench(mm), "bench") { Lighter = 674, Set = ("900 mm", "800 mm") },
        new(
            "out-of-reach", "816 mm, 95th-percentile woman (ANSUR II), where only women work", 816, 817, mm
                => Bench(mm, "people women"), "bench") { Lighter = 674 },
        new(
            "out-of-reach", "742 mm, 5th-percentile man (ANSUR II), where only men work", 742, 743, mm
                => Bench(mm, "people men"), "bench") { Set = ("800 mm", "700 mm") },
        new("out-of-reach", "691 mm, 10th-percentile woman (ANSUR II)", 691, 692, mm => Bench(mm, "people 10 to 90 %"), "bench"),
        new(
            "out-of-reach", "868 mm, 90th-percentile man (ANSUR II)", 868, 869, mm
                => Bench(mm, "people 10 to 90 %"), "bench") { Lighter = 691 },
        new("out-of-reach", "674 mm (ANSUR II), to a bin beside the bench", 674, 675, Bin, "bench", "bin") { Set = ("700 mm", "600 mm") },
        new("out-of-reach", "674 mm (ANSUR II), to a rack behind a tank", 674, 675, Rack, "rack") {
            Set = ("700 mm", "600 mm"), Within = 0.1 },
        new("out-of-reach", "886 mm (ANSUR II), to a rack behind a tank", 886, 887, Rack, "rack") {
            Lighter = 674, Set = ("900 mm", "800 mm"), Within = 0.1 },
        new(
            "out-of-reach", "653 mm with both hands: 674 less half of 335 mm between the shoulders of a 5th-percentile woman (ANSUR II)",
            653, 654, mm => BothHands(Rack(mm)), "rack") { Set = ("700 mm", "600 mm"), Within = 0.1 },
        new(
            "out-of-reach", "857 mm with both hands: 886 less half of 447 mm between the shoulders of a 95th-percentile man (ANSUR II)",
            857, 858, mm => BothHands(Rack(mm)), "rack") { Lighter = 653, Within = 0.1 },
        new(
            "out-of-reach", "674 mm (ANSUR II), to a rack behind a tank with a load of less than 3 kg (ISO 11228-1, from memory)", 674, 675,
            mm => BothHands(Rack(mm), "2.9 kg"), "rack") { Within = 0.1 },
        new(
            "out-of-reach", "674 mm from the shoulder of a 5th-percentile woman, 1242 mm up (ANSUR II), to a hose", 674, 675, mm
                => Hose(mm, 1242), "hz1") { Set = ("700 mm", "650 mm"), Within = 0.1 },
        new(
            "out-of-reach", "886 mm from the shoulder of a 95th-percentile man, 1546 mm up (ANSUR II), to a hose", 886, 887, mm
                => Hose(mm, 1546), "hz1") { Lighter = 674, Within = 0.1 },
        new(
            "out-of-reach", "742 mm from the shoulder of a 5th-percentile man, 1339 mm up (ANSUR II), to a hose, where only men work", 742,
            743, mm => Hose(mm, 1339, "people men"), "hz1") { Within = 0.1 },
        new(
            "out-of-reach", "674 mm from the shoulder of a 5th-percentile woman, 1242 mm up (ANSUR II), to the top of a rack", 674, 675, mm
                => Shelf(mm, 1242), "rack") { Set = ("700 mm", "600 mm") },
        new(
            "out-of-reach", "886 mm from the shoulder of a 95th-percentile man, 1546 mm up (ANSUR II), to the top of a rack", 886, 887, mm
                => Shelf(mm, 1546), "rack") { Lighter = 674 },
        new(
            "elbow-room", "forearm-forearm breadth of a 95th-percentile man 667 mm (ANSUR II)", 667, 666, mm
                => Elbows(mm, "eu"), "bench") { Set = ("600 mm", "700 mm") },
        new(
            "elbow-room", "564 mm, 95th-percentile woman (ANSUR II), where only women work", 564, 563, mm
                => Elbows(mm, "eu", "people women"), "bench"),
        new(
            "bench-height", "28 in: heavy standing work, NIOSH 97-117", 711.2, 710, mm
                => BenchHeight(mm), "bench") { Set = ("700 mm", "750 mm") },
        new("bench-height", "43 in: precise standing work, NIOSH 97-117", 1092.2, 1093, mm => BenchHeight(mm), "bench"),
        new(
            "bench-height", "28 in at least, work said to be heavy, NIOSH 97-117", 711.2, 710, mm
                => BenchHeight(mm, "heavy"), "bench") { Set = ("700 mm", "750 mm") },
        new("bench-height", "35 in at most, heavy work, NIOSH 97-117", 889, 890, mm => BenchHeight(mm, "heavy"), "bench"),
        new(
            "bench-height", "34 in at least, light work, NIOSH 97-117", 863.6, 862, mm
                => BenchHeight(mm, "light"), "bench") { Set = ("850 mm", "900 mm") },
        new("bench-height", "37 in at most, light work, NIOSH 97-117", 939.8, 941, mm => BenchHeight(mm, "light"), "bench"),
        new(
            "bench-height", "37 in at least, precise work, NIOSH 97-117", 939.8, 939, mm
                => BenchHeight(mm, "precise"), "bench") { Set = ("900 mm", "950 mm") },
        new(
            "bench-height", "43 in at most, work said to be precise, NIOSH 97-117", 1092.2, 1093, mm
                => BenchHeight(mm, "precise"), "bench"),
        new(
            "bench-height", "meat cut at most 22 cm below the elbow, Magnusson and Ortengren 1987; middle woman's 1022 mm, ANSUR II",
            1022 - 220, 801, mm => BenchHeight(mm, "cutting"), "bench") { Set = ("790 mm", "810 mm") },
        new(
            "bench-height", "meat cut at least 17 cm below the elbow, Magnusson and Ortengren 1987; middle man's 1104 mm, ANSUR II",
            1104 - 170, 935, mm => BenchHeight(mm, "cutting"), "bench"),
        new(
            "bench-height", "meat cut at least 17 cm below the elbow where only women work", 1022 - 170, 853, mm
                => BenchHeight(mm, "cutting", "people women"), "bench"),
        new(
            "bench-height", "meat cut at most 22 cm below the elbow where only men work", 1104 - 220, 883, mm
                => BenchHeight(mm, "cutting", "people men"), "bench"),
        new(
            "hand-carry-too-far", "carries of 2.1 m to 10 m: LM-MMH equations, Potvin and others, Ergonomics 64(8), 2021", 10_000, 10_001,
            Carry, "pack", "wash") { Set = ("11 m", "9 m") },
        new("hand-carry-too-far", "20 m: ISO 11228-1:2021 (from memory)", 20_000, 20_001, Carry, "pack", "wash") {
            Lighter = 10_000, Set = ("21 m", "19 m") },
        new(
            "lift-too-heavy", "index 1: 51 lb held close at 30 in, lifted seldom, DHHS (NIOSH) 94-110", 1, 1.01, index
                => Lift(index * 51, 762), "bench", "rack") { Set = ("1.2", "0.9") },
        new(
            "lift-too-heavy", "index 1: 51 lb x (1 - 0.0075 x 10) at 40 in, DHHS (NIOSH) 94-110", 1, 1.01, index
                => Lift(index * 51 * 0.925, 1016), "bench", "rack"),
        new("lift-too-heavy", "index 3: three times 51 lb, DHHS (NIOSH) 94-110, rev. 2021", 3, 3.03, index
            => Lift(index * 51, 762), "bench", "rack") { Lighter = 1 },
        new("lift-too-heavy", "20 kg where women work: ISO 11228-1:2021 (from memory)", 20, 20.1, kg
            => Lift(kg / 0.45359237, 762).Replace("  people men\n", "", StringComparison.Ordinal), "bench", "rack") { Within = 0.02 },
        new(
            "rail-height", "1926 mm, fingertips of a 5th-percentile woman with the arm up: ANSUR II, worked out", 1926, 1927, mm
                => Rail(mm), "r1", "table") { Set = ("2000 mm", "1900 mm") },
        new(
            "rail-height", "2097 mm, fingertips of a 5th-percentile man, where only men work: ANSUR II, worked out", 2097, 2098, mm
                => Rail(mm, "people men"), "r1", "table"),
        new(
            "rail-height", "48 in over the floor, as a note: FSIS Guidebook 1997, chapter 10, Table 8; poultry", 48 * 25.4, 1218, mm
                => Rail(mm).With("code us, trade poultry"), "r1"),
        new(
            "rail-height", "6 ft 6 in, as a note: FSIS Guidebook 1997, chapter 9, table 4, less 1 ft of trolley; red meat", 78 * 25.4, 1980,
            mm => Rail(mm).With("code us, trade red meat"), "r1"),
    ];

    /// <summary>From a bench to another of the same height, so that the load goes neither up nor down.</summary>
    private static string Lift(double pounds, double high) => Invariant($"""
        {Head}
          product hams, {pounds:0.#####} lb each
          people men
        shell shed 6000 x 3000 x 2600
        room salt "Salting" clean from west to east
        station bench "Bench" in salt
          size   1500 x 600 x {high}
          place  against north wall, 500 from west
          worker south
        station rack "Rack" in salt
          size   1500 x 600 x {high}
          place  against north wall, 500 from east
          worker south
        flow product
          bench -> rack by hand
        """);

    private static string BenchHeight(double high, string kind = "", string people = "") => Invariant($"""
        {Head}
          {people}
        shell shed 5000 x 3000 x 2600
        room cut "Cutting" clean from west to east
        door d1 cut to outside, south wall, 700 from west, 900 x 2050, swings out
        station bench "Trim bench" in cut
          size   1800 x 600 x {high:0.####}
          place  against north wall, 2500 from west
          worker south
          work   30 s each{(kind.Length > 0 ? ", " : "")}{kind}
        """);

    /// <summary>The worker stands south, so the far side is as far as the bench is deep.</summary>
    private static string Bench(double deep, string people = "") => Invariant($"""
        {Head}
          {people}
        shell container 20 ft high-cube
        room cut "Cutting" clean from west to east
        door d1 cut to outside, south wall, 700 from west, 900 x 2050, swings out
        station bench "Trim bench" in cut
          size   1800 x {deep} x 900
          place  against north wall, 2500 from west
          worker south
        """);

    /// <summary>The worker stands at the middle of a bench 1000 long; the bin's near corner lies on the line of its front edge.</summary>
    private static string Bin(double reach) => Invariant($"""
        {Head}
        shell container 20 ft high-cube
        room cut "Cutting" clean from west to east
        door d1 cut to outside, south wall, 700 from west, 900 x 2050, swings out
        station bench "Trim bench" in cut
          size   1000 x 600 x 900
          place  against north wall, 2000 from west
          worker south
          waste  0.1 kg each to bin
        bin bin 60 L in cut
          size   400 x 600 x 800
          place  against north wall, east of bench gap {reach - 500}
        """);

    /// <summary>A rack in the corner with a tank right before it: hands go over the tank.</summary>
    private static string Rack(double deep) => Invariant($"""
        {Head}
        shell container 20 ft high-cube
        room cut "Cutting" clean from west to east
        door d1 cut to outside, south wall, 700 from west, 900 x 2050, swings out
        station bench "Trim bench" in cut
          size   1000 x 600 x 900
          place  against north wall, 200 from west
          worker south
        store rack "Rack" in cut
          size   1200 x 500 x 1200
          place  corner north-east
        station tank "Tank" in cut
          size   1200 x {deep} x 850
          place  against east wall, south of rack
        station cabinet "Cabinet" in cut
          size   2000 x {500 + deep} x 1800
          place  against north wall, west of rack
        flow product
          bench -> rack by hand
        """);

    private static string BothHands(string plan, string load = "3 kg")
        => plan.Replace("by hand", $"by hand {load}", StringComparison.Ordinal);

    /// <summary>
    /// A hose on the wall behind a bench 600 deep: by Pythagoras as high over the shoulder as makes the slant <paramref name="reach"/>.
    /// </summary>
    private static string Hose(double reach, double shoulder, string people = "") => Invariant($"""
        {Head}
          {people}
        shell container 20 ft high-cube
        room cut "Cutting" clean from west to east
        door d1 cut to outside, south wall, 700 from west, 900 x 2050, swings out
        station bench "Trim bench" in cut
          size   1800 x 600 x 900
          place  against north wall, 2500 from west
          worker south
          needs  cold
        water w1 cold in cut, north wall, 3400 from west, height {shoulder + Math.Sqrt((reach * reach) - (600 * 600)):0.####}
        hose hz1 on w1, 8 m
        """);

    /// <summary>A rack that one stands right before: its top is straight up from the shoulder.</summary>
    private static string Shelf(double reach, double shoulder) => Invariant($"""
        {Head}
        shell container 20 ft high-cube
        room cut "Cutting" clean from west to east
        door d1 cut to outside, south wall, 700 from west, 900 x 2050, swings out
        station bench "Trim bench" in cut
          size   1000 x 600 x 900
          place  against north wall, 200 from west
          worker south
        store rack "Rack" in cut
          size   1200 x 500 x {shoulder + reach:0.####}
          place  corner north-east
        flow product
          bench -> rack by hand
        """);

    private static string Elbows(double apart, string code, string people = "") => Invariant($"""
        plan "Edge"
          units metric
          code {code}
          {people}
        shell container 20 ft high-cube
        room cut "Cutting" clean from west to east
        door d1 cut to outside, south wall, 700 from west, 900 x 2050, swings out
        station bench "Trim bench" in cut
          size    2400 x 600 x 900
          place   against north wall, 2500 from west
          workers 2 south, {apart} apart
        """);

    /// <summary>Two tables of one size along a wall: the walk between their workers is straight.</summary>
    private static string Carry(double far) => Invariant($"""
        {Head}
        shell shed 26 m x 3 m x 2.5 m
        room cut "Packing" clean from west to east
        door d1 cut to outside, south wall, 700 from west, 900 x 2050, swings out
        station wash "Wash table" in cut
          size   1200 x 600 x 900
          place  against north wall, 100 from west
          worker south
        station pack "Packing table" in cut
          size   1200 x 600 x 900
          place  against north wall, {100 + far} from west
          worker south
        flow product
          wash -> pack by hand
        """);

    /// <summary>Ducks hung on a rail that runs over the places of those who hang them.</summary>
    private static string Rail(double height, string people = "") => Invariant($"""
        plan "Edge"
          units metric
          product ducks, 2.5 kg each
          {people}
        shell shed 6000 x 3000 x 2600
        room hang "Hanging" dirty from west to east
        door d1 hang to outside, south wall, 300 from west, 1000 x 2050, swings out
        station table "Hanging table" in hang
          size   1000 x 600 x 900
          place  against north wall, 600 from west
          worker south
        station pluck "Plucker" in hang
          size   800 x 800 x 1200
          place  corner north-east
        rail r1 "Bird rail" in hang
          path   600 1700, 5000 1700
          height {height:0.####}
        flow product
          table -> pluck by rail
        """);
}
