using System.Globalization;
using System.Text;

namespace Floorplan.Tests.Sizing.CarryingIn;

/// <summary>
/// Sheds of one room or two, packed with things at random until little floor is left. Many of their things block each other, which things
/// of sound plans seldom do. Invented and seeded.
/// </summary>
internal static class PackedUnits
{
    private const int Wall = 100;

    public static string Make(int seed)
    {
        var random = new Random(seed);
        int width = random.Next(30, 90) * 100, depth = random.Next(20, 45) * 100, door = random.Next(7, 16) * 100;
        bool two = random.Next(2) == 0;
        int middle = width * random.Next(35, 65) / 100;
        int first = two ? middle - Wall - (Wall / 2) : width - (2 * Wall);
        var text = new StringBuilder();
        Line($"plan \"Packed\"");
        Line($"  units metric");
        Line($"shell shed {width} x {depth} x 2600");
        Line($"room a \"A\" clean from west to {(two ? middle : "east")}");
        if (two)
        {
            Line($"room b \"B\" clean from {middle} to east");
            Line($"door d2 a to b, {random.Next(1, 10) * 50} from south, {random.Next(8, 14) * 100} x 2050, swings b");
        }

        int place = random.Next(1, Math.Max(2, (first - door) / 60)) * 50;
        Line($"door d1 a to outside, south wall, {place} from west, {door} x 2050, swings out");
        var put = new List<(char Room, int X, int Y, int Width, int Depth)>();
        for (int tries = random.Next(20, 120); tries > 0; tries--)
        {
            char room = two && random.Next(2) == 0 ? 'b' : 'a';
            int free = room == 'a' ? first : width - middle - Wall - (Wall / 2), deep = depth - (2 * Wall);
            int w = random.Next(3, 24) * 100, d = (random.Next(3, 14) * 50) + 100;
            (w, d) = random.Next(2) == 0 ? (d, w) : (w, d);
            if (w > free - 50 || d > deep - 50)
            {
                continue;
            }

            int x = random.Next(0, ((free - w) / 50) + 1) * 50, y = random.Next(0, ((deep - d) / 50) + 1) * 50;
            (x, y) = random.Next(3) switch
            {
                0 => (x, random.Next(2) * (deep - d)),
                1 => (random.Next(2) * (free - w), y),
                _ => (x, y),
            };
            if (!put.Exists(p => p.Room == room && p.X < x + w && x < p.X + p.Width && p.Y < y + d && y < p.Y + p.Depth))
            {
                put.Add((room, x, y, w, d));
                Line($"station s{put.Count} \"S{put.Count}\" in {room}");
                Line($"  size {w} x {d} x {random.Next(6, 22) * 100}");
                Line($"  place at {x}, {y}");
            }
        }

        return text.ToString();

        void Line(FormattableString line) => text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
    }
}
