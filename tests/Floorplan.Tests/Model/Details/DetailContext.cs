namespace Floorplan.Tests.Model.Details;

/// <summary>A small plan in which one statement is tried with one detail. All names that examples use are in it.</summary>
internal static class DetailContext
{
    private static readonly string[] Fixtures =
    [
        "plan \"Tried\"",
        "shell container 40 ft high-cube",
        "room receiving \"Receiving\" dirty from west to 4000",
        "room filleting \"Filleting\" clean from 4000 to 8400",
        "door d1 receiving to outside, south wall, 500 from west, 900 x 2050",
        "opening o1 receiving to filleting, 200 from north, 900 x 2050",
        "station gutting \"Gutting\" in receiving, 1400 x 600 x 920, against north wall, 1200 from west, worker south",
        "bin offal-bin in receiving, 400 x 400, against north wall, 100 from west",
        "water w1 cold in filleting, north wall, 500 from west, height 1200",
        "water w2 cold in receiving, north wall, 900 from west, height 1200",
        "drain fd1 floor in filleting, 500 from west, 500 from south",
        "drain fd2 floor in filleting, 900 from west, 500 from south",
    ];

    /// <param name="example">The detail as written; empty for none.</param>
    public static string Text(string statement, string example)
    {
        string[] lines = statement switch
        {
            "plan" => With("plan", ["plan \"Tried\"", example]),
            "shell" => Shell(example),
            "room" => Room(example),
            "partitions" => With(null, ["partitions", example]),
            "kind" => With(
                null, [
                    "kind k \"K\"", Needs("size", "size 700 x 500 x 900", example), example, Taken,
                    "  place 2600 from west, 1400 from south"]),
            "station" or "store" => With(null, [$"{statement} t \"T\"", .. Placed(example), example]),
            "bin" or "sink" => With(null, [$"{statement} t wash", .. Placed(example), example]),
            "door" or "hatch" or "window" or "opening" or "chute" or "vent" => With(null, Opening(statement, example)),
            "rail" => With(
                null, [
                    "rail t", Needs("path", "path 300 600, 3000 600", example), Needs("height", "height 2200", example),
                    Needs("in", "in receiving", example), example]),
            "hose" => With(
                null, [example.StartsWith("on ", StringComparison.Ordinal)
                    ? $"hose t {example}"
                    : "hose t on w1", Needs("size", "size 7000", example), example.StartsWith("on ", StringComparison.Ordinal)
                    ? ""
                    : example]),
            "light" => With(null, [$"light {example}"]),
            "air" => With(null, [$"air {example}"]),
            "flow" => With(null, ["flow product", example]),
            "day" => With(null, ["day", example]),
            "accept" => With(null, ["accept waste-meets-product at d1 \"agreed\"", example]),
            "sheet" => With(null, ["sheet 1", example]),
            _ => With(null, Service(statement, example)),
        };
        return string.Join('\n', lines.Where(l => l.Trim().Length > 0)) + "\n";
    }

    /// <summary>A station that takes the kind of this test.</summary>
    private const string Taken = "station t \"T\" like k in filleting";

    private static string[] With(string? without, string[] statement) =>
    [
        .. Fixtures.Where(f => without is null || !f.StartsWith(without, StringComparison.Ordinal)),
        .. statement.Where(l => l.Length > 0).Select((l, i) => i == 0 || l == Taken ? l : "  " + l),
    ];

    /// <summary>A usual line, where the detail that is tried is not this one.</summary>
    private static string Needs(string word, string line, string example) => example.StartsWith(word, StringComparison.Ordinal) ? "" : line;

    private static string[] Placed(string example) =>
    [
        Needs("in ", "in filleting", example),
        example.StartsWith("round", StringComparison.Ordinal) ? "" : Needs("size", "size 700 x 500 x 900", example),
        Needs("place", "place 1600 from west, 1400 from south", example),
    ];

    private static string[] Shell(string example)
    {
        string head = example.Split(' ')[0] switch
        {
            "hitch" or "axles" or "weight" => "shell trailer 11 m x 2.4 m x 2.6 m",
            "posts" or "walls" => "shell shed 12000 x 6000 x 2700",
            "eaves" => "shell shed 12000 x 6000",
            "corners" => "shell shed",
            _ => "shell container 40 ft high-cube",
        };
        return [.. Fixtures.Where(f => !f.StartsWith("shell", StringComparison.Ordinal)
            && !f.StartsWith("room filleting", StringComparison.Ordinal)), head, "  " + example, head == "shell shed"
                ? "  eaves 2700"
                : ""];
    }

    private static string[] Room(string example) => example.StartsWith("from", StringComparison.Ordinal)
        ? [.. Fixtures.Where(f => !f.StartsWith("room receiving", StringComparison.Ordinal)), "room receiving \"Receiving\" dirty", "  "
            + example]
        : With(null,
        [
            "room t \"T\" staff", Needs("area", "area 1310 x 1110", example), Needs("place", "place corner south-east", example),
            Needs("in ", "in filleting", example), example,
        ]);

    private static string[] Opening(string statement, string example)
    {
        bool wall = example.EndsWith("wall", StringComparison.Ordinal);
        return
        [
            $"{statement} t filleting to outside", wall
                ? ""
                : "south wall", Needs("size", "size 800 x 700", example), Needs("place", "place 1200 from west", example), example,
        ];
    }

    private static string[] Service(string statement, string example)
    {
        bool wall = example.EndsWith("wall", StringComparison.Ordinal);
        bool onFloor = !wall && (statement == "drain" || example.StartsWith("place", StringComparison.Ordinal));
        return
        [
            $"{statement} t {(statement == "hole" && onFloor ? "floor " : "")}in filleting",
            onFloor ? Needs("place", "1300 from west, 700 from south", example) : wall ? "1300 from west" : "south wall, 1300 from west",
            onFloor ? "" : Needs("height", "height 1100", example),
            statement == "hole" ? Needs("size", "size 90", example) : "",
            example,
        ];
    }
}
