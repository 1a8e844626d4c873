using System.Globalization;
using System.Text;

namespace Floorplan.Benchmarks;

/// <summary>
/// Makes plans of any size that a builder could have drawn: a long shed cut into equal rooms, each with benches down both
/// long walls, its own doors, sink, water, drains and crew, and one line of product through all of it. Invented.
/// </summary>
public static class PlanGenerator
{
    private const int StationsPerRoom = 100;
    private const int RoomWidth = 5000;
    private const int Pitch = 1600;
    private const int DoorEnd = 3000;

    /// <param name="stations">Number of benches; sinks come on top, one a room.</param>
    public static string Make(int stations)
    {
        int rooms = (stations + StationsPerRoom - 1) / StationsPerRoom;
        int rows = (Math.Min(stations, StationsPerRoom) + 1) / 2;
        int depth = (2 * DoorEnd) + (rows * Pitch);
        var text = new StringBuilder();
        Line(text, $"plan \"Long shed of {stations} benches\"");
        Line(text, $"  units metric");
        Line(text, $"  code us");
        Line(text, $"  product crates, 10 kg each");
        Line(text, $"shell shed {rooms * RoomWidth} x {depth} x 3000");
        Line(text, $"  lining walls 20, ceiling 20, floor 100");
        for (int r = 0; r < rooms; r++)
        {
            Room(text, r, rooms, Math.Min(StationsPerRoom, stations - (r * StationsPerRoom)));
        }

        return text.ToString();
    }

    /// <summary>One room, a dozen tables, and one flow that wanders between them.</summary>
    /// <param name="stops">Number of stops.</param>
    public static string OneFlow(int stops)
    {
        const int tables = 12;
        var text =
            new StringBuilder(
                "plan \"One long flow\"\n  units metric\nshell shed 20000 x 10000 x 3000\nroom a \"A\" clean from west to east\n");
        Line(text, $"door d a to outside, south wall, 9000 from west, 1000 x 2100, swings out");
        for (int i = 0; i < tables; i++)
        {
            Line(text, $"station s{i} \"Table {i}\" in a\n  size 600 x 600 x 900");
            Line(text, $"  place at {500 + (1500 * i)}, {4000 + (3000 * (i % 2))}\n  worker south");
        }

        text.Append("flow product\n  outside -> d");
        for (int n = 0; n < stops; n++)
        {
            // 5 and 12 have no common factor: every table is called at, in an order that crosses the room.
            text.Append(CultureInfo.InvariantCulture, $" -> s{n * 5 % tables}");
        }

        return text.Append('\n').ToString();
    }

    private static void Room(StringBuilder text, int r, int rooms, int stations)
    {
        string from = r == 0 ? "west" : (r * RoomWidth).ToString(CultureInfo.InvariantCulture);
        string to = r == rooms - 1 ? "east" : ((r + 1) * RoomWidth).ToString(CultureInfo.InvariantCulture);
        Line(text, $"room r{r} \"Room {r}\" clean from {from} to {to}");
        Line(text, $"door out{r} r{r} to outside, south wall, 1500 from west, 1200 x 2100, swings out, opens from inside");
        Line(text, $"door back{r} r{r} to outside, north wall, 1500 from west, 1200 x 2100, swings out, opens from inside");
        if (r > 0)
        {
            Line(text, $"door d{r} r{r - 1} to r{r}, 600 from south, 1200 x 2100, slides, opens from inside");
        }

        Line(text, $"sink k{r} hand in r{r}, 450 x 350, against south wall, 300 from east");
        for (int s = 0; s < stations; s++)
        {
            Station(text, r, s);
        }

        Services(text, r, stations);
        Flows(text, r, stations);
    }

    private static void Station(StringBuilder text, int r, int s)
    {
        string side = s % 2 == 0 ? "west" : "east";
        string along = s < 2 ? $"{DoorEnd} from south" : $"north of b{r}-{s - 2} gap {Pitch - 1200}";
        Line(text, $"station b{r}-{s} \"Bench {r}.{s}\" in r{r}");
        Line(text, $"  size   600 x 1200 x 900");
        Line(text, $"  place  against {side} wall, {along}");
        Line(text, $"  worker {(s % 2 == 0 ? "east" : "west")}");
        Line(text, $"  work   20 s each");
        Line(text, $"  needs  cold 6 L/min, drain");
    }

    private static void Services(StringBuilder text, int r, int stations)
    {
        for (int n = 0; n < Math.Max(1, stations / 6); n++)
        {
            int y = DoorEnd + (Math.Min(n * 3, (stations - 1) / 2) * Pitch) + 600;
            Line(text, $"water w{r}-{n} cold hot in r{r}, {(n % 2 == 0 ? "west" : "east")} wall, {y} from south, height 1200");
            Line(text, $"drain g{r}-{n} floor in r{r}, centred, {y} from south, 100");
        }

        Line(text, $"falls r{r} 0.5 %");
    }

    private static void Flows(StringBuilder text, int r, int stations)
    {
        Line(text, $"flow product");
        string start = r == 0 ? "outside -> out0" : $"b{r - 1}-{StationsPerRoom - 1} -> d{r}";
        text.Append(CultureInfo.InvariantCulture, $"  {start}");
        for (int s = 0; s < stations; s++)
        {
            // Ten stops a line, as a person would break it.
            text.Append(s > 0 && s % 10 == 0
                ? string.Create(CultureInfo.InvariantCulture, $"  by hand\n  b{r}-{s - 1} -> b{r}-{s}")
                : string.Create(CultureInfo.InvariantCulture, $" -> b{r}-{s}"));
        }

        Line(text, $"  by hand");
        Line(text, $"flow people \"Crew {r}\"");
        Line(text, $"  outside -> out{r} -> k{r} -> b{r}-0");
    }

    private static void Line(StringBuilder text, FormattableString line)
        => text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
}
