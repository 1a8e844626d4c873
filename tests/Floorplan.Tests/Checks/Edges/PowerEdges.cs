using Floorplan.Tests.Checks.Support;
using static System.FormattableString;

namespace Floorplan.Tests.Checks.Edges;

internal static class PowerEdges
{
    private const double Foot = 304.8;
    private const double Inch = 25.4;

    /// <summary>One lumen a square foot, in lux.</summary>
    private const double FootCandle = 10.76391;

    /// <summary>In m3/s.</summary>
    private const double Cfm = 0.000471947443;

    public static IReadOnlyList<Edge> All { get; } =
    [
        new(
            "panel-space", "3 ft before 0 to 150 V to ground: 29 CFR 1910.303 Table S-1, as WAC 296-24-95703; code us", 3 * Foot, 913, mm
                => Panel(mm, "us"), "p1", "tank") { Set = ("900 mm", "1000 mm") },
        new("panel-space", "3 ft, as advice: code eu", 3 * Foot, 913, mm => Panel(mm, "eu"), "p1", "tank") { Set = ("900 mm", "1000 mm") },
        new("outlet-unprotected", "6 ft from a sink: NEC 2023 210.8(B)", 6 * Foot, 1828, Outlet, "s1", "x1") { Set = ("1.8 m", "1.9 m") },
        new(
            "switch-out-of-reach", "48 in at most: 2010 ADA 308.2, as advice", 48 * Inch, 1220, mm
                => Switch(mm, 0), "sw1") { Set = ("1300 mm", "1200 mm") },
        new("switch-out-of-reach", "15 in at least: 2010 ADA 308.2, as advice", 15 * Inch, 380, mm => Switch(mm, 0), "sw1"),
        new(
            "switch-out-of-reach", "44 in at most over 20 to 25 in: 2010 ADA 308.2.2, as advice", 44 * Inch, 1119, mm
                => Switch(mm, 600), "bench", "sw1"),
        new(
            "switch-out-of-reach", "25 in at most to reach over: 2010 ADA 308.2.2, as advice", 25 * Inch, 636, mm
                => Switch(1000, mm), "bench", "sw1"),
        new(
            "too-dark", "50 fc where hands work with food: FDA Food Code 6-303.11(C); code us", 50 * FootCandle, 537, lux
                => Light(lux, "clean", "us", Worker), "cut") { Set = ("500 lux", "560 lux") },
        new(
            "too-dark", "500 lux in butchery: EN 12464-1, from memory; code eu", 500, 499, lux
                => Light(lux, "clean", "eu", Worker), "cut") { Set = ("450 lux", "540 lux") },
        new(
            "too-dark", "220 lux in work rooms: CAC/RCP 11-1976, secondary copy; code none", 220, 219, lux
                => Light(lux, "clean", "none", Worker), "cut") { Set = ("200 lux", "240 lux") },
        new(
            "too-dark", "30 fc on work surfaces: 9 CFR 354.226(a), for rabbits; code us", 30 * FootCandle, 322, lux
                => Light(lux, "dirty", "us", Worker), "cut"),
        new(
            "too-dark", "220 lux in work rooms: CAC/RCP 11-1976, secondary copy; code eu", 220, 219, lux
                => Light(lux, "dirty", "eu", Worker), "cut"),
        new(
            "too-dark", "20 fc where people wash: FDA Food Code 6-303.11(B); code us", 20 * FootCandle, 214, lux
                => Light(lux, "staff", "us", ""), "cut"),
        new("too-dark", "200 lux in toilets: EN 12464-1; code eu", 200, 199, lux => Light(lux, "toilet", "eu", ""), "cut"),
        new(
            "too-dark", "110 lux elsewhere: CAC/RCP 11-1976, secondary copy; code none", 110, 109, lux
                => Light(lux, "staff", "none", ""), "cut"),
        new(
            "too-dark", "10 fc in stores: FDA Food Code 6-303.11(A); code us", 10 * FootCandle, 107, lux
                => Light(lux, "cold", "us", ""), "cut"),
        new("too-dark", "100 lux in stores: EN 12464-1; code eu", 100, 99, lux => Light(lux, "dry", "eu", ""), "cut"),
        new(
            "too-dark", "110 lux in stores: CAC/RCP 11-1976, secondary copy; code none", 110, 109, lux
                => Light(lux, "cold", "none", ""), "cut"),
        new(
            "too-little-air", "4 air changes an hour: Malaysian code of veterinary practice 3.11", 4, 3.99, Changes,
            "scald") { Set = ("3.5 changes/h", "5 changes/h") },
        new("too-little-air", "50 cfm from a toilet: ASHRAE 62.1, secondary copy", 50 * Cfm, 49 * Cfm, Toilet, "wc") { Within = 1e-6 },
    ];

    /// <summary>An outlet on the wall of a sink in a dry room, that far from it.</summary>
    private static string Outlet(double away) => Invariant($"""
        plan "Edge"
          units metric
        shell shed 6000 x 3000 x 2600
        room pack "Packing" dry from west to east
        door d1 pack to outside, south wall, 300 from west, 1000 x 2050, swings out
        sink s1 hand in pack, 400 x 350 x 900, against north wall, 1000 from west
        outlet x1 in pack, north wall, {1400 + away:0.####} from west, height 1100, 16 A 230 V
        """);

    /// <summary>A switch that high, behind a low bench that deep; no bench when 0.</summary>
    private static string Switch(double height, double deep)
    {
        string text = Invariant($"""
            plan "Edge"
              units metric
            shell shed 6000 x 3000 x 2600
            room pack "Packing" dry from west to east
            door d1 pack to outside, south wall, 300 from west, 1000 x 2050, swings out
            switch sw1 in pack, north wall, 2500 from west, height {height:0.####}
            """);
        return deep == 0
            ? text
            : text + Invariant($"\nstation bench in pack, 1200 x {deep:0.####} x 800, against north wall, 2000 from west");
    }

    private static string Light(double lux, string kind, string code, string inIt) => Invariant($"""
        plan "Edge"
          units metric
          code {code}
        shell shed 6000 x 3000 x 2600
        room cut "Cutting" {kind} from west to east
        door d1 cut to outside, south wall, 300 from west, 1000 x 2050, swings out
        light cut {lux:0.####} lux
        {inIt}
        """);

    /// <summary>A room of 6 x 4 x 2.5 m inside, so of 60 m3.</summary>
    private static string Changes(double anHour) => Invariant($"""
        plan "Edge"
          units metric
        shell shed 6200 x 4200 x 2500
          walls 100
        room scald "Scalding" dirty from west to east
        door d1 scald to outside, south wall, 300 from west, 1000 x 2050, swings out
        air exhaust scald {anHour * 60:0.####} m3/h
        """);

    private static string Toilet(double cubicMetresPerSecond) => Invariant($"""
        plan "Edge"
          units metric
        shell shed 3000 x 3000 x 2500
        room wc "Toilet" toilet from west to east
        door d1 wc to outside, south wall, 300 from west, 1000 x 2050, swings out
        air exhaust wc {cubicMetresPerSecond / Cfm:0.####} cfm
        """);

    private const string Worker = "station bench in cut, 1800 x 600 x 900, against north wall, centred, worker south";

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
