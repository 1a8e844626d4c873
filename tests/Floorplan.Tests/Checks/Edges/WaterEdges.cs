using Floorplan.Sizing.Water.Pipes;
using Floorplan.Tests.Checks.Support;
using static System.FormattableString;

namespace Floorplan.Tests.Checks.Edges;

internal static class WaterEdges
{
    private const double SquareFoot = 0.3048 * 0.3048;
    private const double Foot = 304.8;

    public static IReadOnlyList<Edge> All { get; } =
    [
        new(
            "water-too-far", "a branch of 3 m (own assumption), cold", 3000, 3001, mm
                => Rinse($"needs cold 8 L/min", Invariant($"water w1 cold in rinse, north wall, {2000 + mm} from west, height 1200")),
                    "bench", "w1") { Set = ("3.5 m", "2.5 m") },
        new(
            "water-too-far", "a branch of 3 m (own assumption), hot", 3000, 3001, mm
                => Rinse($"needs hot 8 L/min at 60 C", Invariant($"water w1 hot in rinse, north wall, {2000 + mm} from west, height 1200")),
                    "bench", "w1") { Set = ("3.5 m", "2.5 m") },
        new(
            "drain-too-far", "run-off of 3 m (own assumption)", 3000, 3001, mm
                => Rinse("needs drain", Invariant($"drain fd1 floor in rinse, {2000 + mm} from west, 200 from north, 100")), "bench",
                    "fd1") { Set = ("3.5 m", "2.5 m") },
        new(
            "drain-too-few", "a drain for each 400 sq ft: COMAR 10.15.03.21, Maryland", 400 * SquareFoot,
            400.5 * SquareFoot, m2 => OneDrain(m2 * 1e6 / (20 * Foot), 20 * Foot).With("country us-md"), "wash") {
            Set = ("40 m2", "30 m2"), Within = 1e-3 },
        new(
            "drain-too-few", "a drain for each 400 sq ft, as a note: Iowa meat plant guidelines", 400 * SquareFoot,
            400.5 * SquareFoot, m2 => OneDrain(m2 * 1e6 / (20 * Foot), 20 * Foot).With("country us-ia, trade red meat"), "wash") {
            Set = ("40 m2", "30 m2"), Within = 1e-3 },
        new(
            "fall-not-possible", "rise = slope x run, from the floor build-up of 50 mm", 50, 51, mm
                => Falls(mm / 0.02, floor: 50, outlet: 200), "fd1", "wash"),
        new(
            "fall-not-possible", "an outlet no higher than the low floor: 2 % over 2.5 m", 50, 49, mm
                => Falls(2500, floor: 60, outlet: mm), "fd1", "wash"),
        new(
            "fall-not-possible", "an outlet above the ground, here 500 mm below the floor", 500, 501, mm
                => Rinse("needs drain", Invariant($"drain fd1 floor in rinse, 1500 from west, centred, 100, outlet {mm} below floor")),
                    "fd1"),
        new("hand-sink-too-far", "25 ft: FDA/CFP Food Establishment Plan Review Guide 2000, Part 4; retail in the US", 25 * Foot,
            (25 * Foot)
            + 1, mm => SinkAlong(mm, "code us, plant retail"), "bench", "s1") { Set = ("8 m", "7 m") },
        new("hand-sink-too-far", "25 ft quoted where the plan does not say whose plant it is", 25 * Foot, (25 * Foot)
            + 1, mm => SinkAlong(mm, "code us"), "bench", "s1") { Set = ("8 m", "7 m") },
        new(
            "hand-sink-too-far", "3 m: Poultry Regulations 2006, reg 15, South Africa", 3000, 3001, mm
                => SinkAlong(mm, "country za, trade poultry"), "bench", "s1") { Set = ("3.5 m", "2.5 m") },
        new(
            "hand-sink-too-far", "3 m: Red Meat Regulations 2004, reg 15, South Africa", 3000, 3001, mm
                => SinkAlong(mm, "country za, trade red meat"), "bench", "s1") { Set = ("3.5 m", "2.5 m") },
        new(
            "hand-sink-too-far", "3 m quoted for poultry under code eu, which has no figure", 3000, 3001, mm
                => SinkAlong(mm, "code eu, trade poultry"), "bench", "s1") { Set = ("3.5 m", "2.5 m") },
        new(
            "sterilizer-too-cool", "82 C: Reg (EC) 853/2004 Annex III; poultry under code eu", 82, 81, c
                => Sterilizer(c, "code eu, trade poultry"), "z1") { Set = ("80 C", "85 C") },
        new(
            "sterilizer-too-cool", "180 F: 9 CFR 354.224, for rabbits, a note; game under code us", 148 / 1.8, 82, c
                => Sterilizer(c, "code us, trade game"), "z1") { Set = ("80 C", "85 C") },
        new(
            "sterilizer-too-cool", "82 C: Red Meat Regulations 2004, reg 14, South Africa", 82, 81, c
                => Sterilizer(c, "country za, trade red meat"), "z1") { Set = ("80 C", "85 C") },
        new(
            "hand-sinks-too-few", "one for 10 workers: Malaysian code of practice for poultry (MY COVP 2017), 5.12", 10, 11, people
                => Crew(people, "country my, trade poultry"), "s1") { Set = ("12", "9") },
        new("hand-sinks-too-few", "one basin for 5 people: UK code of practice L24, table 1", 5, 6, people
            => Crew(people, "country uk"), "s1") { Set = ("12", "4") },
        new("eyewash-too-far", "55 ft: ANSI/ISEA Z358.1, secondary copy; code us", 55 * Foot, (55 * Foot)
            + 1, mm => Eyewash(mm, "code us"), "foam", "e1") { Set = ("18 m", "15 m"), Within = 1 },
        new("eyewash-too-far", "as far in Europe, own assumption: EN 15154-2 gives no distance", 55 * Foot, (55 * Foot)
            + 1, mm => Eyewash(mm, "code eu"), "foam", "e1") { Set = ("18 m", "15 m"), Within = 1 },
        // A person's middle keeps 225 mm off the walls: half of the 450 mm that the floor's own movers take (ANSUR II).
        new(
            "hose-misses-floor", "a jet of 2 m past the nozzle (own assumption)", 2000, 2010, Hose, "wash",
            "hz1") { Set = ("2.5 m", "1.5 m"), Within = 6 },
        new(
            "sink-blocked", "half a standing place and a short bend, 450 mm (own assumption)", 450, 452, SinkBetween, "left", "right",
            "s1") { Set = ("500 mm", "440 mm"), Within = 0.6 },
        new(
            "air-gap-missing", "25 mm at least: FDA Food Code 5-202.13, as Minnesota Rules 4626.1055; retail", 25, 24, mm
                => Gap(mm).With("code us, plant retail"), "tank") { Set = ("20 mm", "30 mm") },
        new("air-gap-missing", "20 mm at least: EN 1717, type AA; Water Fittings Regulations 1999, UK", 20, 19, mm
            => Gap(mm).With("country uk"), "tank") { Set = ("15 mm", "30 mm") },
        new("air-gap-missing", "20 mm at least, common practice; code none", 20, 19, mm => Gap(mm).With("code none"), "tank") {
            Set = ("15 mm", "30 mm") },
        new(
            "air-gap-missing", "twice an inlet of 20 mm: FDA Food Code 5-202.13, as Minnesota Rules 4626.1055", 40, 39, mm
                => Rinse(
                    "needs cold 8 L/min",
                    Invariant(
                        $"station tank \"Tank\" in rinse, 900 x 600 x 850, against north wall, 2500 from west, air gap {mm}, inlet 20")),
                            "tank"),
        new(
            "supply-too-small", "8 psi at the worst outlet: IPC 2018 Table 604.3", WaterPiping.LeastPressure,
                WaterPiping.LeastPressure - 100,
            LeftOver, "bench") { Within = 10 },
        new(
            "supply-too-small", "8 ft/s in a cold pipe: UPC 2021 610.12, here of 22 x 1 mm", 8 * 0.3048, (8 * 0.3048) + 0.01,
            speed => Rinse(
                Invariant($"needs cold {speed * Math.PI / 4 * 0.02 * 0.02 * 60_000:0.######} L/min"),
                "water w1 cold in rinse, north wall, 2700 from west, height 1200, 22"), "w1") { Within = 1e-4 },
        new(
            "hot-water-short", "70 % of the store and 10 kW for an hour against a hose in wash-down", HoseHour, HoseHour - 0.001, Heater,
            "wh1") { Within = 1e-5 },
        new(
            "drain-pipe-too-small", "a building drain of 3 in takes 42 units at 1/4 in a foot: IPC 2018 Table 710.1(1)", 101.6, 76.2, mm
                => Rinse("needs cold 72 L/min, drain", Invariant($"""
                water w1 cold in rinse, north wall, 2700 from west, height 1200
                drain fd1 floor in rinse, 1500 from west, centred, {mm}
                """)).Replace("code eu", "code us", StringComparison.Ordinal), "fd1"),
        new(
            "drain-line-uphill", "2 % over 2.5 m: EN 12056-2, from memory", 50, 49, mm => Rinse("needs drain", Invariant($"""
                drain fd1 floor in rinse, 1500 from west, centred, 100, outlet 200 below floor, runs to fd2
                drain fd2 floor in rinse, 4000 from west, centred, 100, outlet {200 + mm} below floor
                """)), "fd1", "fd2"),
        new(
            "drain-line-uphill", "1/4 in a foot over 10 ft: IPC 2021 704.1", 63.5, 63, mm => Rinse("needs drain", Invariant($"""
                drain fd1 floor in rinse, 1000 from west, centred, 100, outlet 200 below floor, runs to fd2
                drain fd2 floor in rinse, 4048 from west, centred, 100, outlet {200 + mm} below floor
                """)).Replace("code eu", "code us", StringComparison.Ordinal), "fd1", "fd2"),
        new(
            "waste-tank-too-small", "15 % more than the fresh water: many US states, common practice", 115, 114, percent
                => Rinse("needs cold 8 L/min", Invariant($"""
                bin fresh "Fresh water tank" 200 L in rinse, 600 x 600 x 700, against north wall, 2500 from west
                bin waste "Waste water tank" {2 * percent} L in rinse, 600 x 600 x 700, against north wall, 3500 from west
                """)), "waste") { Set = ("110 %", "120 %") },
    ];

    /// <summary>5 gpm for half an hour of 50 C, in water of 60 C from 10 C, m3.</summary>
    private const double HoseHour = 5 * 0.003785411784 * 30 * 0.8;

    /// <summary>A heater of 10 kW with such a store that both give so many m3 in an hour.</summary>
    private static string Heater(double cubicMetres) => Rinse("needs cold 8 L/min, drain\n  worker south\n  work 60 s each", Invariant($"""
        water w1 cold hot in rinse, north wall, 2700 from west, height 1200
        hose hz1 on w1, 5 m
        drain fd1 floor in rinse, 1500 from west, centred, 100
        heater wh1 in rinse, west wall, 300 from south, 10 kW {(cubicMetres - (10e3 * 3600 / (4186e3 * 50))) / 0.7 * 1000:0.######} L
        flow product
          outside -> d1 -> bench -> d1 -> outside by hand
        day
          target 20 crates/h for 2 h
          crew rinse 1
          wash-down 1 h
        """));

    /// <summary>The main of 3 bar is run first, and what it leaves too much is taken off.</summary>
    private static string LeftOver(double pascals)
    {
        double left = CheckedPlan.Facts(CheckedPlan.Plan(Main(3e5))).WaterPiping!.Pressure!.Value;
        return Main(3e5 - left + pascals);

        static string Main(double pascals) => Rinse("needs cold 8 L/min", """
            water w1 cold in rinse, north wall, 2700 from west, height 1200
            hole water-in "Cold water" in rinse, north wall, 5 m from west, height 150, 40
            """).Replace("  code eu\n", Invariant($"  code eu\n  mains {pascals / 1e5:0.########} bar\n"), StringComparison.Ordinal);
    }

    private static string Gap(double mm) => Rinse("needs cold 8 L/min",
        Invariant($"station tank \"Tank\" in rinse, 900 x 600 x 850, against north wall, 2500 from west, air gap {mm}"));

    private static string Rinse(string needs, string more) => $"""
        plan "Edge"
          units metric
          code eu
        shell container 20 ft high-cube
          ground 500 below floor
        room rinse "Rinse room" dirty from west to east
        door d1 rinse to outside, south wall, 700 from west, 900 x 2050, swings out
        station bench "Rinse bench" in rinse
          size  1400 x 600 x 900
          place against north wall, 600 from west
          {needs}
        {more}
        """;

    private static string Sterilizer(double celsius, string head) => Rinse("needs cold 8 L/min", Invariant($"""
        water w1 hot in rinse, north wall, 2700 from west, height 1200
        sink z1 sterilizer in rinse
          size  300 x 300 x 900
          place against north wall, 2500 from west
          needs hot 2 L/min at {celsius:0.####} C
        """)).With(head);

    private static string Crew(double people, string head) => Invariant($"""
        plan "Edge"
          units metric
        shell shed 40 m x 20 m x 4 m
        room pack "Pack hall" clean from west to east
        door d1 pack to outside, south wall, centred, 2000 x 2100, swings out, closes itself
        sink s1 hand in pack, 400 x 350, against north wall, 1000 from west
        day
          crew pack {people}
        """).With(head);

    /// <summary>Two things of one size along a wall: the walk between their fronts is straight.</summary>
    private static string Eyewash(double far, string head) => Invariant($"""
        plan "Edge"
          units metric
        shell shed 20000 x 3000 x 2500
        room clean "Cleaning" staff from west to east
        door d1 clean to outside, south wall, 500 from west, 900 x 2050, swings out
        store foam chemicals in clean, 400 x 400 x 900, against north wall, 600 from west
        sink e1 eyewash in clean, 400 x 400 x 900, against north wall, {600 + far:0.####} from west
        """).With(head);

    /// <summary>A shed with walls of 100 mm round a floor of the size asked for.</summary>
    private static string OneDrain(double length, double depth, string more = "") => Invariant($"""
        plan "Edge"
          units metric
          code eu
        shell shed {length + 200:0.####} x {depth + 200:0.####} x 2800
          {more}
        room wash "Wash" dirty from west to east
        door d1 wash to outside, south wall, centred, 900 x 2050, swings out
        drain fd1 floor in wash, {length / 2:0.####} from west, centred, 100
        """);

    /// <summary>
    /// Floor that goes on so far past the end of a hose: both ends of its way lie 225 mm off the north wall, and it is as long as the
    /// floor less 225 mm at each end.
    /// </summary>
    private static string Hose(double past) => Invariant($"""
        plan "Edge"
          units metric
          code eu
        shell shed {5000 + past + 450 + 200:0.####} x 650 x 2800
        room wash "Wash" dirty from west to east
        door d1 wash to outside, west wall, centred, 400 x 2050, slides
        water w1 cold in wash, north wall, 225 from west, height 1200
        hose hz1 on w1, 5 m
        """);

    private static string Falls(double run, double floor, double outlet)
    {
        // Linings of 0 leave the walls where they are; the slope is 1/4 in/ft, CURFFL 114150(b), California.
        string plan = OneDrain(2 * run * 12 / 13, 2 * run * 5 / 13, Invariant($"lining walls 0, ceiling 0, floor {floor}"));
        return plan + Invariant($", outlet {outlet:0.####} below floor\nfalls wash 2 % to fd1");
    }

    /// <summary>Bench and sink are equally deep, so the walk from the worker to before the sink is straight.</summary>
    private static string SinkAlong(double walk, string head) => Invariant($"""
        plan "Edge"
          units metric
        shell shed 12 m x 4 m x 2.8 m
        room cut "Cutting" clean from west to east
        door d1 cut to outside, south wall, centred, 900 x 2050, swings out
        station bench "Cutting bench" in cut
          size   1800 x 600 x 900
          place  against north wall, 100 from west
          worker south
        sink s1 hand in cut
          size   400 x 600 x 900
          place  against north wall, {1000 - 200 + walk:0.####} from west
          clear  south 450
        """).With(head);

    /// <summary>
    /// Benches on both sides stand out past the sink; a body 320 mm deep (abdominal depth of a 95th-percentile man, ANSUR II) stands
    /// before them.
    /// </summary>
    private static string SinkBetween(double toMiddle) => Invariant($"""
        plan "Edge"
          units metric
          code eu
        shell container 20 ft high-cube
        room gut "Gutting" dirty from west to east
        door d1 gut to outside, south wall, 700 from west, 900 x 2050, swings out
        sink s1 hand in gut
          size  400 x 350 x 900
          place against north wall, 2200 from west
        station left "Left bench" in gut
          size  1000 x {350 + toMiddle - 160} x 900
          place against north wall, west of s1
        station right "Right bench" in gut
          size  1000 x {350 + toMiddle - 160} x 900
          place against north wall, east of s1
        """);
}
