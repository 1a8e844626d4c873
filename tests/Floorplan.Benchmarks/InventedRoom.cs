namespace Floorplan.Benchmarks;

/// <summary>A slice of an invented unit with its things along both long walls, and in deep sheds in a row between.</summary>
internal sealed class InventedRoom
{
    private static readonly string[] Classes = ["dirty", "clean", "clean", "cold", "dry", "staff", "clean"];

    public InventedRoom(InventedWords words, Random random, int at, int stations, Func<double, int> whole, int depth, string bin)
    {
        Id = words.Id("r", at);
        Label = words.Room(at);
        Class = Classes[at % Classes.Length];
        int rows = depth > whole(3900) ? 3 : 2;
        // The south row leaves room for the outer door, all rows for the doors between rooms.
        int[] ends = [whole(150), whole(1150), whole(950)];
        int narrowest = whole(2200);
        for (int i = 0; i < stations; i++)
        {
            int row = i % rows, width = whole(600 + (random.Next(9) * 100)), deep = whole(450 + (random.Next(4) * 50));
            string word = i == 0 && at % 2 == 0 ? "sink" : Class == "cold" ? "store" : random.Next(8) == 0 ? "bin" : "station";
            string before = word switch
            {
                "sink" => "hand ",
                "bin" => bin + " ",
                _ => $"\"{words.Station()}\" ",
            };
            (width, deep) = word is "sink" or "bin" ? (whole(450), whole(400)) : (width, deep);
            Stations.Add(
                new InventedStation(word, words.Id("s", (at * 100) + i), before, width, deep, row, ends[row], row == 2
                    ? (depth / 2) - (deep / 2)
                    : 0));
            ends[row] += width + whole(100 + (random.Next(4) * 100));
        }

        Width = Math.Max(narrowest, ends.Take(rows).Max() + whole(rows == 3 ? 900 : 300));
    }

    public string Id { get; }

    public string Label { get; }

    public string Class { get; }

    public int Width { get; }

    public List<InventedStation> Stations { get; } = [];

    /// <summary>The door outside, and the one to the room before.</summary>
    public string Door { get; set; } = "";

    public string Inner { get; set; } = "";
}

/// <param name="Row">0 north wall, 1 south wall, 2 between.</param>
internal sealed record InventedStation(string Word, string Id, string Before, int Width, int Depth, int Row, int West, int South)
{
    public string Side => Row == 1 ? "north" : "south";

    public string Place(Func<int, string> length) => Row switch
    {
        0 => $"against north wall, {length(West)} from west",
        1 => $"against south wall, {length(West)} from west",
        _ => $"at {length(West)}, {length(South)}",
    };
}
