using System.Globalization;
using System.Text;

namespace Floorplan.Benchmarks;

/// <summary>
/// Two hundred plans such as builders write: containers, trailers and sheds of 5 to 60 stations in rooms, with doors, hatches, water,
/// drains, power and flows; every fifth in feet, every fourth with labels of sixty letters. Invented and seeded; some have faults, as
/// plans under way do.
/// </summary>
public sealed class InventedPlans
{
    public const int Count = 200;

    private const int Fewest = 5;
    private const int Most = 60;
    private const double Inch = 25.4;

    private readonly StringBuilder text = new();
    private readonly Random random;
    private readonly InventedWords words;
    private readonly bool feet;
    private readonly int depth;
    private readonly int number;
    private readonly List<InventedRoom> rooms = [];
    private readonly List<string> drains = [];
    private int openings;

    private InventedPlans(int number)
    {
        this.number = number;
        random = new Random(number);
        feet = number % 5 == 0;
        words = new InventedWords(random, number % 8 == 3
            ? InventedNames.SixtyLetters
            : number % 8 == 7
            ? InventedNames.OneWordOfSixty
            : number % 8 == 5
            ? InventedNames.LongIds
            : InventedNames.Usual);
        int stations = Fewest + (number * (Most - Fewest) / (Count - 1));
        depth = Whole(stations <= 24 ? 2300 : 4000 + random.Next(3000));
        int inRooms = Math.Clamp((stations / 8) + 1 + random.Next(2), 2, 7);
        for (int i = 0; i < inRooms; i++)
        {
            int share = (stations / inRooms) + (i < stations % inRooms ? 1 : 0);
            rooms.Add(new InventedRoom(words, random, i, share, Whole, depth, feet ? "16 gal" : "60 L"));
        }
    }

    /// <param name="number">From 0; plans grow with it.</param>
    public static string Make(int number) => new InventedPlans(number).Write();

    private string Write()
    {
        int length = rooms.Sum(r => r.Width);
        Line($"plan \"Invented unit {number} of {rooms.Sum(r => r.Stations.Count)} stations\"");
        Line($"  number    IN-{number}");
        Line($"  revision  A, 2026-11-25, \"First issue for comment\"");
        Line($"  units     {(feet ? "feet" : "metric")}");
        Line($"  code      {(number % 3 == 0 ? "eu" : "us")}");
        Line($"  product   crates, {(feet ? "40 lb" : "18 kg")} each");
        Line($"  owner     \"{words.Flow("Owners of the unit")}\"");
        Shell(length);
        for (int i = 0, west = 0; i < rooms.Count; west += rooms[i++].Width)
        {
            string from = i == 0 ? "west" : L(west), to = i == rooms.Count - 1 ? "east" : L(west + rooms[i].Width);
            Line($"room {rooms[i].Id} \"{rooms[i].Label}\" {rooms[i].Class} from {from} to {to}");
        }

        Line($"partitions thickness {L(Whole(80))}");
        for (int i = 0; i < rooms.Count; i++)
        {
            Openings(i);
            Stations(rooms[i]);
            Services(rooms[i], i);
        }

        Flows();
        Line($"day\n  crew       {rooms[0].Id} 2, {rooms[^1].Id} 1\n  elsewhere  1 toilet");
        return text.ToString();
    }

    /// <summary>The smallest container that holds the rooms, a trailer, or else a shed. The last room takes what is over.</summary>
    private void Shell(int length)
    {
        double mm = length * (feet ? Inch : 1);
        if (depth < Whole(2400) && mm < 11900 && number % 3 != 0)
        {
            Line($"shell container {(mm < 5800 ? 20 : 40)} ft high-cube\n  lining    walls {L(Whole(20))}, ceiling {L(Whole(60))}, floor "
                + $"{L(Whole(60))}\n  doors     {(number % 2 == 0 ? "west" : "east")}\n  ground    {L(Whole(450))} below floor");
        }
        else if (depth < Whole(2400) && mm < 11900)
        {
            Line($"shell trailer {L(length + Whole(100))} x {L(depth + Whole(120))} x {L(Whole(2700))}\n  hitch     east, "
                + $"{L(Whole(1200))} ahead\n  axles     2\n  lining    walls {L(Whole(25))}, ceiling {L(Whole(25))}, floor {L(Whole(50))}");
        }
        else
        {
            Line($"shell shed {L(length + Whole(200))} x {L(depth + Whole(200))} x {L(Whole(3000))}\n  walls     {L(Whole(100))}\n  "
                + $"posts     every {L(Whole(1200))}");
        }
    }

    private void Openings(int i)
    {
        string room = rooms[i].Id;
        rooms[i].Door = Opening("d");
        Line($"door {rooms[i].Door} {room} to outside, south wall, {L(Whole(100))} from west, {L(Whole(900))} x {L(Whole(2050))}, swings "
            + "out, opens from inside, steps 3");

        if (i > 0)
        {
            rooms[i].Inner = Opening("d");
            Line($"door {rooms[i].Inner} {rooms[i - 1].Id} to {room}, centred, {L(Whole(850))} x {L(Whole(2050))}, "
                + $"{(random.Next(2) == 0 ? "slides" : $"swings {room}")}");
            if (random.Next(2) == 0)
            {
                Line($"hatch {Opening("h")} {rooms[i - 1].Id} to {room}, {L(Whole(100))} from south, {L(Whole(500))} x {L(Whole(500))}, "
                    + $"sill {L(Whole(950))}");
            }
        }

        if (random.Next(2) == 0)
        {
            Line($"window {Opening("n")} {room} to outside, north wall, centred, {L(Whole(800))} x {L(Whole(700))}, sill {L(Whole(1200))}");
        }

        if (random.Next(3) == 0)
        {
            Line($"vent {Opening("v")} {room} to outside, north wall, {L(Whole(200))} from east, {L(Whole(300))} x {L(Whole(300))}, sill "
                + $"{L(Whole(2000))}, frame none");
        }
    }

    private string Opening(string prefix) => words.Id(prefix, ++openings);

    private void Stations(InventedRoom room)
    {
        foreach (var s in room.Stations)
        {
            Line($"{s.Word} {s.Id} {s.Before}in {room.Id}");
            Line($"  size   {L(s.Width)} x {L(s.Depth)} x {L(Whole(s.Word == "store" ? 1800 : 900))}");
            Line($"  place  {s.Place(L)}");
            if (s.Word == "station")
            {
                Line($"  worker {s.Side}");
                Line($"  work   {10 + random.Next(50)} s each");
                string[] needs =
                    [
                        $"cold {(feet ? "2 gpm" : "6 L/min")}, drain", $"power {(feet ? "120 V" : "230 V")} 0.8 kW",
                        $"cold {(feet ? "2 gpm" : "6 L/min")}, hot {(feet ? "1 gpm at 140 F" : "4 L/min at 60 C")}, drain"];
                Line($"  needs  {needs[random.Next(needs.Length)]}");
                if (random.Next(5) == 0)
                {
                    Line($"  clear  {s.Side} {L(Whole(800))} \"{words.Flow("crates")}\"");
                }
            }
        }
    }

    private void Services(InventedRoom room, int i)
    {
        string wall = random.Next(2) == 0 ? "north" : "south";
        string water = words.Id("w", i);
        Line($"water {water} cold hot in {room.Id}, {wall} wall, {L(room.Width / 2)} from west, height {L(Whole(1200))}");
        Line($"outlet {words.Id("x", i)} in {room.Id}, north wall, {L(room.Width / 3)} from west, height {L(Whole(1100))}, 16 A "
            + $"{(feet ? 120 : 230)} V, gfci");
        Line($"light {room.Id} {(feet ? "50 fc" : "540 lux")}");
        string drain = words.Id("f", i);
        if (room.Class is "dirty" or "clean")
        {
            Line($"drain {drain} floor in {room.Id}, centred, {L((room.Width / 2) + Whole(100))} from west, "
                + $"{L(Whole(100))}{(drains.Count > 0 ? ", runs to " + drains[^1] : "")}");
            Line($"falls {room.Id} 2 % to {drain}");
            Line($"hose {words.Id("z", i)} on {water}, {(feet ? "25 ft" : "7.5 m")}, vacuum breaker");
            drains.Add(drain);
        }

        if (i == rooms.Count - 1)
        {
            Line($"panel p1 in {room.Id}, north wall, {L(Whole(200))} from west, 63 A 230 V single-phase");
            Line($"air supply {room.Id}, exhaust {rooms[0].Id}");
        }
    }

    private void Flows()
    {
        Line($"flow product");
        Line($"  outside -> {rooms[0].Door}{Stops(rooms[0])}   by hand");
        for (int i = 1; i < rooms.Count; i++)
        {
            string before = rooms[i - 1].Stations.LastOrDefault(s => s.Word == "station")?.Id ?? rooms[i - 1].Stations[0].Id;
            string carried = random.Next(2) == 0 ? "hand" : $"trolley {L(Whole(600))} wide";
            Line($"  {before} -> {rooms[i].Inner}{Stops(rooms[i])}   by {carried}");
        }

        Line($"  {rooms[^1].Stations[0].Id} -> {rooms[^1].Door} -> outside   by hand");
        Line($"flow waste \"{words.Flow("Trim and water")}\"\n  {rooms[0].Stations[0].Id} -> {rooms[0].Door} -> outside   by hand, after "
            + "work");
        Line($"flow people \"{words.Flow("Crew")}\"\n  outside -> {rooms[0].Door} -> {rooms[0].Stations[^1].Id}");
    }

    /// <summary>A length in the plan's whole units, millimetres or inches.</summary>
    private int Whole(double mm) => (int)Math.Round(feet ? mm / Inch : mm);

    private string L(int units) => units.ToString(CultureInfo.InvariantCulture) + (feet ? " in" : "");

    private static string Stops(InventedRoom room)
        => string.Concat(room.Stations.Where(s => s.Word == "station").Take(6).Select(s => " -> " + s.Id));

    // Numbers are written the same everywhere: the project builds without cultures.
    private void Line(string line) => text.Append(line).Append('\n');
}
