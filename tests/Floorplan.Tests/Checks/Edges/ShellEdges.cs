using Floorplan.Tests.Checks.Support;
using static System.FormattableString;

namespace Floorplan.Tests.Checks.Edges;

/// <summary>
/// ISO 668:2013 (public copy of its table): a 40 ft box is 12 192 mm outside and at least 11 998 mm inside, 2438 and 2330 mm
/// wide. ISO 1161: a corner fitting is 178 mm long; the post at the closed end is taken as long (own assumption).
/// </summary>
internal static class ShellEdges
{
    private const double EndWall = (2438 - 2330) / 2.0;
    private const double Fitting = 178;
    private const double Lining = 60;

    /// <summary>Tube round an opening: the usual one, own assumption.</summary>
    private const double Frame = 50;

    /// <summary>Less than 1 mm is setting out, so the nearest value past a limit is 2 mm from it.</summary>
    public static IReadOnlyList<Edge> All { get; } =
    [
        new(
            "cuts-frame", "50 mm of wall for the opening's own frame (own assumption), to the corner post", 50, 48, FromPost,
            "d1") { Set = ("40 mm", "60 mm") },
        new(
            "cuts-frame", "50 mm (own assumption), to the header of the closed end", 50, 48, BelowHeader,
            "h1") { Set = ("40 mm", "60 mm") },
        new(
            "openings-too-close", "a wave of about 280 mm between two frames (own assumption)", 280, 279, Two, "h1",
            "h2") { Set = ("200 mm", "300 mm") },
        new(
            "openings-too-close", "280 mm (own assumption), one above the other", 280, 279, Stacked, "h1",
            "h2") { Set = ("200 mm", "300 mm") },
        new("openings-too-close", "two frames side by side (geometry)", 0, -1, Two, "h1", "h2") { Lighter = 280 },
        new("wall-cut-too-much", "two fifths of the wall (own assumption)", 40, 40.1, Share, "h1", "h2") {
            Set = ("45 %", "35 %"), Within = 0.02 },
        new("wall-cut-too-much", "half the wall (own assumption)", 50, 50.1, Share, "h1", "h2") { Lighter = 40, Within = 0.02 },
        new("too-high-for-road", "4.00 m: 96/53/EC, Annex I; StVZO section 32", 4000, 4001, mm => Tall(mm, "eu"), "cut") {
            Set = ("4.2 m", "3.8 m"), Within = 0.1 },
        new("too-high-for-road", "13 ft 6 in (common practice)", 4114.8, 4116, mm => Tall(mm, "us"), "cut") { Within = 0.1 },
        new("too-high-for-road", "4 m without a code (common practice)", 4000, 4001, mm => Tall(mm, "none"), "cut") { Within = 0.1 },
        new(
            "floor-overloaded", "4 t on a metre of a 20 ft box: container trade figures", 4000, 4001, kg
                => Tank("20 ft standard", 2000, 2 * kg), "tank") { Set = ("4.5 t", "3.5 t") },
        new(
            "floor-overloaded", "4 t, a thing shorter than a metre (own assumption)", 4000, 4001, kg
                => Tank("20 ft standard", 800, kg), "tank") { Set = ("4.5 t", "3.5 t") },
        new(
            "floor-overloaded", "3 t on a metre of a 40 ft box: container trade figures", 3000, 3001, kg
                => Tank("40 ft standard", 2000, 2 * kg), "tank") { Set = ("3.5 t", "2.5 t") },
        new(
            "too-heavy", "30 480 kg: ISO 668, a 20 ft box of 2300 kg (container trade figures)", 30_480, 30_481, kg
                => Tank("20 ft standard", 5000, kg - 2300), "tank") { Set = ("31 t", "30 t") },
        new(
            "too-heavy", "30 480 kg: ISO 668, a 40 ft box of 3940 kg (container trade figures)", 30_480, 30_481, kg
                => Tank("40 ft standard", 10_000, kg - 3940), "tank") { Set = ("31 t", "30 t") },
        new(
            "too-heavy", "10 160 kg: ISO 668, a 10 ft box that the plan says weighs 1300 kg", 10_160, 10_161, kg
                => Tank("10 ft standard\n  weight 1300 kg empty", 2000, kg - 1300), "tank") { Set = ("11 t", "10 t") },
        new(
            "too-heavy", "the plate of a trailer: 49 CFR 567 (from memory)", 3500, 3501, kg
                => Trailer(1500, kg - 1500, 2500), "tank") { Set = ("4 t", "3 t") },
        new("hitch-load", "10 % of the weight at least: towing practice, code us", 10, 9.9, Hitch, "tank") {
            Set = ("8 %", "12 %"), Within = 0.02 },
        new("hitch-load", "15 % of the weight at most: towing practice, code us", 15, 15.1, Hitch, "tank") { Within = 0.02 },
        new("hitch-load", "4 % at least: Regulation (EU) 1230/2012, Annex I 2.7", 4, 3.9, HitchInEurope, "tank") { Within = 0.02 },
        new(
            "axle-overloaded", "two plates of 1500 kg: 49 CFR 567 (from memory); all weight over the axles", 3000, 3001, kg
                => Trailer(1500, kg - 1500, 4000), "tank"),
        new(
            "too-wide-for-road", "102 in: 23 CFR 658.15; code us", 102 * 25.4, 2592, mm
                => Wide(mm, "us"), "work") { Set = ("2700 mm", "2500 mm") },
        new(
            "too-wide-for-road", "2.55 m: Directive 96/53/EC, Annex I 1.2; code eu", 2550, 2551, mm
                => Wide(mm, "eu"), "work") { Set = ("2700 mm", "2500 mm") },
        new(
            "too-wide-for-road", "2.55 m: Construction and Use Regulations, UK", 2550, 2551, mm
                => Wide(mm, "eu").With("country uk"), "work") { Set = ("2700 mm", "2500 mm") },
    ];

    /// <summary>A door this far from the post of the closed west end, which stands 178 mm in from the outside.</summary>
    /// <summary>Without `ground` the box alone is measured, from its underside to its roof.</summary>
    private static string Tall(double mm, string code) => Invariant($"""
        plan "Edge"
          units metric
          code {code}
        shell trailer 6 m x 2.5 m x {mm} mm
          axles 2
        room cut "Cutting" clean from west to east
        door d1 cut to outside, south wall, 400 from west, 900 x 2050, swings out, closes itself, opens from inside
        """);

    private static string FromPost(double left) => Box(Invariant(
        $"door d1 work to outside, south wall, {left + Fitting - EndWall - Lining} from west, 900 x 2050, swings out, opens from inside"));

    /// <summary>
    /// A hatch this far below the header: the roof lies 241 mm of the height less the floor's 164.5 mm above the inside; the
    /// header is a tube of 60 mm (typical builder's drawing, from memory) 6 mm below the fittings' top (builder's specification).
    /// </summary>
    private static string BelowHeader(double left) => Box(Invariant(
        $"hatch h1 work to outside, west wall, centred, 600 x 400, sill {2591 - 164.5 - Lining - 6 - 60 - left - 400}"));

    private static string Two(double left) => Box(Invariant($"""
        hatch h1 work to outside, north wall, 2000 from west, 600 x 400, sill 1000
        hatch h2 work to outside, north wall, {2600 + left + (2 * Frame)} from west, 600 x 400, sill 1000
        """));

    private static string Stacked(double left) => Box(Invariant($"""
        hatch h1 work to outside, north wall, 2000 from west, 600 x 400, sill 500
        hatch h2 work to outside, north wall, 2200 from west, 600 x 400, sill {900 + left + (2 * Frame)}
        """));

    /// <summary>Two hatches of one width in a wall of 12 192 mm; their holes are broader by the frames.</summary>
    private static string Share(double percent) => Box(Invariant($"""
        hatch h1 work to outside, north wall, 500 from west, {(12192 * percent / 200) - (2 * Frame):0.####} x 400, sill 1000
        hatch h2 work to outside, north wall, 6000 from west, {(12192 * percent / 200) - (2 * Frame):0.####} x 400, sill 1000
        """));

    private static string Tank(string container, double length, double kg) => Invariant($"""
        plan "Edge"
          units metric
          code eu
        shell container {container}
        room work "Work room" dry from west to east
        door d1 work to outside, south wall, 700 from west, 900 x 2050, swings out
          frame none
        station tank "Tank" in work
          size   {length} x 1200 x 1200
          place  against north wall, 100 from east
          weight {kg} kg
        """);

    /// <summary>
    /// A tank so far behind the coupling, which lies 1000 before a box of 6000; axles 4000 behind the coupling, under the middle.
    /// </summary>
    private static string Trailer(double empty, double kg, double behind) => Invariant($"""
        plan "Edge"
          units metric
          code eu
        shell trailer 6 m x 2.4 m x 2.5 m
          walls  50
          hitch  west, 1000 ahead
          axles  2, 4000 from hitch, 1500 kg each
          weight {empty} kg empty, 3500 kg rated
        room work "Work room" dry from west to east
        door d1 work to outside, south wall, 700 from west, 900 x 2050, swings out
          frame none
        station tank "Tank" in work
          size   1000 x 1200 x 1200
          place  against north wall, {behind - 1000 - 50 - 500:0.####} from west
          weight {kg} kg
        """);

    /// <summary>
    /// Trailer and tank of 1000 kg each, the trailer's own over its axles: the tank alone loads the hitch, by how far it stands before
    /// them.
    /// </summary>
    private static string Hitch(double percent)
        => HitchInEurope(percent).Replace("code eu", "code us", StringComparison.Ordinal);

    private static string HitchInEurope(double percent) => Trailer(1000, 1000, 4000 * (1 - (percent / 50)));

    private static string Wide(double mm, string code) => Invariant($"""
        plan "Edge"
          units metric
          code {code}
        shell trailer 6 m x {mm:0.####} x 2.5 m
        room work "Work room" dry from west to east
        door d1 work to outside, south wall, 700 from west, 900 x 2050, swings out
        """);

    private static string Box(string opening) => $"""
        plan "Edge"
          units metric
          code eu
        shell container 40 ft standard
          lining walls 60, floor 60
          doors  east
        room work "Work room" dry from west to east
        {opening}
        """;
}
