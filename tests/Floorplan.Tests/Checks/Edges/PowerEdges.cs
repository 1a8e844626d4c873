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
        new("cold-room-too-warm", "poultry at 4 C: 853/2004 Annex III s.II, Tier-LMHV", 4, 4.2, c => Cold(c, "eu", "ducks"), "store"),
        new("cold-room-too-warm", "poultry at 40 F (common practice)", 4.4, 4.6, c => Cold(c, "us", "ducks"), "store") {
            Set = ("6 C", "3 C") },
        new("cold-room-too-warm", "meat at 7 C: 853/2004 Annex III s.I ch.VII", 7, 7.2, c => Cold(c, "eu", "lambs"), "store"),
        new("cold-room-too-warm", "meat at 7 C (common practice)", 7, 7.2, c => Cold(c, "none", "lambs"), "store"),
        new("cold-room-too-warm", "fish near melting ice, 2 C: 853/2004 Annex III s.VIII", 2, 2.2, c => Cold(c, "eu", "fish"), "store"),
        new("cold-room-too-warm", "fish at 38 F (common practice)", 3.3, 3.5, c => Cold(c, "us", "fish"), "store"),
        new("cold-room-too-warm", "milk at 8 C: 853/2004 Annex III s.IX", 8, 8.2, c => Cold(c, "eu", "milk"), "store"),
        new("cold-room-too-warm", "milk at 45 F: PMO 17p", 7.2, 7.4, c => Cold(c, "us", "milk"), "store"),
        new(
            "panel-space", "3 ft before 0 to 150 V to ground: 29 CFR 1910.303 Table S-1, as WAC 296-24-95703; code us", 3 * Foot, 913, mm
                => Panel(mm, "us"), "p1", "tank") { Set = ("900 mm", "1000 mm") },
        new("panel-space", "700 mm as a note: IEC 60364-7-729, from memory; code eu", 700, 699, mm => Panel(mm, "eu"), "p1", "tank") {
            Set = ("600 mm", "800 mm") },
        new(
            "panel-space", "3 ft 6 in facing grounded parts, 151 to 600 V to ground: 29 CFR 1910.303 Table S-1", 42 * Inch, 1066, mm
                => Panel(mm, "us").Replace("230 V single-phase", "480 V three-phase", StringComparison.Ordinal), "p1", "tank") {
            Set = ("900 mm", "1100 mm") },
        new("outlet-unprotected", "6 ft from a sink: NEC 2023 210.8(B); code us", 6 * Foot, 1828, mm
            => Outlet(mm).With("code us"), "s1", "x1") { Set = ("1.8 m", "1.9 m") },
        new("outlet-unprotected", "6 ft from a sink, common practice; code none", 6 * Foot, 1828, Outlet, "s1", "x1") {
            Set = ("1.8 m", "1.9 m") },
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
            "too-dark", "50 fc where hands work with food: FDA Food Code 6-303.11(C); retail", 50 * FootCandle, 537, lux
                => Light(lux, "clean", "code us, plant retail", Worker), "cut") { Set = ("500 lux", "560 lux") },
        new(
            "too-dark", "500 lux in butchery: EN 12464-1", 500, 499, lux
                => Light(lux, "clean", "code eu, trade red meat", Worker), "cut") { Set = ("450 lux", "540 lux") },
        new("too-dark", "300 lux for sorting and packing: EN 12464-1", 300, 299, lux
            => Light(lux, "clean", "code eu, trade produce", Worker), "cut"),
        new("too-dark", "200 lux for washing, cooking and filling: EN 12464-1", 200, 199, lux
            => Light(lux, "clean", "code eu, trade kitchen", Worker), "cut"),
        new(
            "too-dark", "220 lux in work rooms: common practice, once in CAC/RCP 11-1976; code none", 220, 219, lux
                => Light(lux, "clean", "code none", Worker), "cut") { Set = ("200 lux", "240 lux") },
        new(
            "too-dark", "50 fc in a dirty room: FDA Food Code 6-303.11(C); retail", 50 * FootCandle, 537, lux
                => Light(lux, "dirty", "code us, plant retail", Worker), "cut"),
        new("too-dark", "200 lux in a dirty room: EN 12464-1", 200, 199, lux => Light(lux, "dirty", "code eu", Worker), "cut"),
        new("too-dark", "220 lux as a note in meat plants: FSA Meat Guide, UK, 2006", 220, 219, lux
            => Light(lux, "dirty", "country uk, trade poultry", Worker), "cut"),
        new(
            "too-dark", "20 fc where people wash: FDA Food Code 6-303.11(B); code us", 20 * FootCandle, 214, lux
                => Light(lux, "staff", "code us, plant retail", ""), "cut"),
        new("too-dark", "200 lux in toilets: EN 12464-1; code eu", 200, 199, lux => Light(lux, "toilet", "code eu", ""), "cut"),
        new(
            "too-dark", "110 lux elsewhere: common practice, once in CAC/RCP 11-1976; code none", 110, 109, lux
                => Light(lux, "staff", "code none", ""), "cut"),
        new(
            "too-dark", "10 fc in stores: FDA Food Code 6-303.11(A); code us", 10 * FootCandle, 107, lux
                => Light(lux, "cold", "code us, plant retail", ""), "cut"),
        new("too-dark", "100 lux in stores: EN 12464-1; code eu", 100, 99, lux => Light(lux, "dry", "code eu", ""), "cut"),
        new(
            "too-dark", "110 lux in stores: common practice, once in CAC/RCP 11-1976; code none", 110, 109, lux
                => Light(lux, "cold", "code none", ""), "cut"),
        new(
            "too-little-air", "4 air changes an hour: Malaysian code of veterinary practice 3.11", 4, 3.99, anHour
                => Changes(anHour).With("country my, trade poultry"), "scald") { Set = ("3.5 changes/h", "5 changes/h") },
        new(
            "circuit-overloaded", "80 % of its breaker for hours: NEC 210.20(A), secondary copy; code us", 80, 80.1,
            percent => Outlet("us", 240, 20, percent), "saw", "x1") { Set = ("90 %", "70 %") },
        new(
            "circuit-overloaded", "load current no more than the device: IEC 60364-4-43 433.1, secondary copy; code eu", 100, 100.1,
            percent => Outlet("eu", 230, 16, percent), "saw", "x1") { Set = ("110 %", "90 %") },
        new(
            "circuit-overloaded", "load current no more than the device: IEC 60364-4-43 433.1, secondary copy; code none", 100, 100.1,
            percent => Outlet("none", 230, 16, percent), "saw", "x1"),
        new(
            "voltage-mismatch", "machines bear a tenth more or less: IEC 60038 and NEMA MG 1, from memory", 10, 10.1,
            percent => Machine("none", "63 A 230 V single-phase", Invariant($"{230 / (1 - (percent / 100)):0.########} V 1 kW")),
            "p1", "saw") { Set = ("12 %", "8 %") },
        new(
            "voltage-drop", "5 % to the farthest outlet: NEC 210.19(A), informational note, secondary copy; code us", 5, 5.01,
            percent => Machine("us", "60 A 240 V single-phase", Drawing(120, percent, 3.07 / 304.8)), "p1", "saw") { Set = ("6 %", "4 %") },
        new(
            "voltage-drop", "5 % of other uses: IEC 60364-5-52 Table G.52.1, secondary copy; code eu", 5, 5.01,
            percent => Machine("eu", "63 A 230 V single-phase", Drawing(230, percent, 0.0145)), "p1", "saw") { Set = ("6 %", "4 %") },
        new(
            "voltage-drop", "3 % of light: IEC 60364-5-52 Table G.52.1, secondary copy; code none", 3, 3.01, Lamps, "hall", "p1"),
        new(
            "panel-too-small", "no less than the load: NEC 408.30, from memory; code us", 100, 100.1,
            percent => Machine("us", "60 A 240 V single-phase", Watts(240, 60, percent)), "p1") { Set = ("110 %", "90 %") },
        new(
            "panel-too-small", "no less than the load: IEC 60364-4-43 433.1, secondary copy; code eu", 100, 100.1,
            percent => Machine("eu", "63 A 230 V single-phase", Watts(230, 63, percent)), "p1") { Set = ("110 %", "90 %") },
        new("too-little-air", "50 cfm from a toilet: ASHRAE 62.1, secondary copy", 50 * Cfm, 49 * Cfm, flow
            => Toilet(flow).With("code us"), "wc") { Within = 1e-6 },
    ];

    /// <summary>An outlet on the wall of a sink in a dry room, that far from it.</summary>
    private static string Cold(double celsius, string code, string product) => Invariant($"""
        plan "Edge"
          units metric
          code {code}
          product {product}, 2 kg each
        shell shed 6000 x 4000 x 2600
        room store "Store" cold from west to east
          keep {celsius} C
        door d1 store to outside, south wall, 300 from west, 1000 x 2050, swings out, closes itself, opens from inside
        """);

    private static string Outlet(double away) => Invariant($"""
        plan "Edge"
          units metric
        shell shed 6000 x 3000 x 2600
        room pack "Packing" dry from west to east
        door d1 pack to outside, south wall, 300 from west, 1000 x 2050, swings out
        sink s1 hand in pack, 400 x 350 x 900, against north wall, 1000 from west
        outlet x1 in pack, north wall, {1400 + away:0.####} from west, height 1100, 16 A 230 V
        """);

    private static string Watts(double volts, double amperes, double percent)
        => Invariant($"{volts:0.###} V {volts * amperes * percent / 100:0.########} W");

    /// <summary>A machine at the end of <see cref="Far"/> of the smallest wire, there and back, that loses so much.</summary>
    /// <param name="ohms">Of a metre of one conductor.</param>
    private static string Drawing(double volts, double percent, double ohms)
        => Watts(volts, volts / (2 * ohms * Far), percent);

    /// <summary>
    /// In m: from a panel 1600 high up to a ceiling at 2600, 30 m along the wall, down to a machine 900 high.
    /// </summary>
    private const double Far = 1 + 30 + 1.7;

    private static string Outlet(string code, double volts, double amperes, double percent) => Invariant($"""
        plan "Edge"
          units metric
          code {code}
        shell shed 6000 x 3000 x 2600
        room pack "Packing" dry from west to east
        door d1 pack to outside, south wall, 300 from west, 1000 x 2050, swings out
        panel p1 in pack, east wall, 1500 from south, 100 A {volts:0.###} V single-phase
        outlet x1 in pack, north wall, 2400 from west, height 1100, {amperes:0.###} A {volts:0.###} V, circuit 1
        station saw "Saw" in pack
          size 600 x 600 x 900
          place against north wall, 1000 from west
          needs power {Watts(volts, amperes, percent)}
          circuit 1
        """);

    private static string Machine(string code, string panel, string power) => Invariant($"""
        plan "Edge"
          units metric
          code {code}
        shell shed 40200 x 3200 x 2600
          walls 100
          lining walls 0, ceiling 0, floor 0
        room hall "Hall" dry from west to east
        door d1 hall to outside, south wall, 10 m from west, 1000 x 2050, swings out
        panel p1 in hall, west wall, 500 from south, height 1600, {panel}
        station saw "Saw" in hall
          size 600 x 600 x 900
          place 29700 from west, 200 from south
          needs power {power}
        """);

    /// <summary>
    /// 40 x 3 m of floor, two lamps of half of the power; 1 m up, 20 m along and 1 m across to the middle of the ceiling, in 1.5 mm2 of
    /// 29 mV for each A and m.
    /// </summary>
    private static string Lamps(double percent) => Invariant($"""
        plan "Edge"
          units metric
        shell shed 40200 x 3200 x 2600
          walls 100
          lining walls 0, ceiling 0, floor 0
        room hall "Hall" dry from west to east
          lamps 2 x 9000 lm {percent / 100 * 230 / (0.029 * 22) * 230 / 2:0.########} W
        door d1 hall to outside, south wall, 10 m from west, 1000 x 2050, swings out
        panel p1 in hall, west wall, 500 from south, height 1600, 63 A 230 V single-phase
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
        text = text.With("code us");
        return deep == 0
            ? text
            : text + Invariant($"\nstation bench in pack, 1200 x {deep:0.####} x 800, against north wall, 2000 from west");
    }

    private static string Light(double lux, string kind, string head, string inIt) => Invariant($"""
        plan "Edge"
          units metric
        shell shed 6000 x 3000 x 2600
        room cut "Cutting" {kind} from west to east
        door d1 cut to outside, south wall, 300 from west, 1000 x 2050, swings out
        light cut {lux:0.####} lux
        {inIt}
        """).With(head);

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
