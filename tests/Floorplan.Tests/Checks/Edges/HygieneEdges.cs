using Floorplan.Tests.Checks.Support;
using static System.FormattableString;

namespace Floorplan.Tests.Checks.Edges;

internal static class HygieneEdges
{
    public static IReadOnlyList<Edge> All { get; } =
    [
        new("doubles-back", "a fifth of the way (own assumption)", 20, 20.1, Back, "c", "b") { Set = ("25 %", "15 %") },
        new(
            "sterilizer-too-far", "3 m: Poultry Regulations 2006, reg 14, South Africa", 3000, 3001, mm
                => Sterilizer(mm).With("country za, trade poultry"), "bench", "z1") { Set = ("3.5 m", "2.5 m") },
        new(
            "sterilizer-too-far", "3 m: Red Meat Regulations 2004, reg 14, South Africa", 3000, 3001, mm
                => Sterilizer(mm).With("country za, trade red meat"), "bench", "z1") { Set = ("3.5 m", "2.5 m") },
        new(
            "toilets-too-few", "one toilet for 15 people: 29 CFR 1910.141(c)(1), Table J-1", 15, 16, people
                => Crew(people, 1), "pack") { Set = ("20", "14") },
        new("toilets-too-few", "one for 5: UK code of practice L24, table 1", 5, 6, people
            => Crew(people, 1).With("country uk"), "pack") { Set = ("20", "4") },
        new("toilets-too-few", "two for 25: UK code of practice L24, table 1", 25, 26, people
            => Crew(people, 2).With("country uk"), "pack"),
        new("toilets-too-few", "one set for 9: ASR A4.1, Germany, 4(6)", 9, 10, people
            => Crew(people, 1).With("country de"), "pack") { Set = ("20", "8") },
        new("toilets-too-few", "two for 35", 35, 36, people => Crew(people, 2), "pack") { Set = ("20", "14") },
        new("toilets-too-few", "three for 55", 55, 56, people => Crew(people, 3), "pack"),
        new("toilets-too-few", "four for 80", 80, 81, people => Crew(people, 4), "pack"),
        new("toilets-too-few", "five for 110", 110, 111, people => Crew(people, 5), "pack"),
        new("toilets-too-few", "six for 150", 150, 151, people => Crew(people, 6), "pack"),
        new("toilets-too-few", "above 150 one more for each 40", 190, 191, people => Crew(people, 7), "pack"),
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

    private static string Sterilizer(double mm) => Invariant($"""
        plan "Edge"
          units metric
          code eu
        shell shed 9000 x 3000 x 2500
        room draw "Drawing" clean from west to east
        door d1 draw to outside, south wall, centred, 900 x 2050, swings out
        station bench in draw
          size   1200 x 600 x 900
          place  against north wall, 100 from west
          worker south
          needs  cold 4 L/min, sterilizer, drain
        sink z1 sterilizer in draw, 300 x 300, against north wall, {1300 + mm} from west
        """);

    private static string Crew(double people, int toilets) => Invariant($"""
        plan "Edge"
          units metric
          code us
        shell shed 40 m x 20 m x 4 m
        room pack "Pack hall" clean from west to east
        door d1 pack to outside, south wall, centred, 2000 x 2100, swings out
        day
          crew pack {people}
          elsewhere {toilets} toilets, changing room
        """);

    private static string Table(string name, double west) => Invariant($"""
        station {name} in wash
          size   900 x 600 x 900
          place  against north wall, {west} from west
          worker south
        """);
}
