namespace Floorplan.Benchmarks;

/// <summary>Names for invented plans, from one short word to sixty letters without a space. Seeded, so the same everywhere.</summary>
internal sealed class InventedWords(Random random, InventedNames names)
{
    /// <summary>As long as a person may write who describes the thing in its name.</summary>
    private const int Longest = 60;

    private static readonly string[] Things =
    [
        "bench", "table", "scale", "sealer", "tank", "sink table", "rack", "slicer", "mixer", "kettle", "cooler", "trolley place",
        "skinner", "saw", "grinder", "labeller",
    ];

    private static readonly string[] Work =
        [
            "Gutting", "Washing", "Packing", "Weighing", "Chilling", "Cutting", "Tipping", "Sorting", "Salting", "Filling", "Trimming",
            "Checking"];

    private static readonly string[] More =
        [
            "by the door", "left", "right", "stainless with a drip tray", "for the second shift", "no. 2",
            "with raised edge and shelf below", "on lockable wheels"];

    private static readonly string[] Rooms =
        [
            "Receiving", "Preparation hall", "Cutting and trimming", "Packing", "Cold store", "Change and wash", "Cartons and film",
            "Dispatch"];

    public string Station() => Fit($"{Any(Work)} {Any(Things)}");

    public string Room(int at) => Fit(Rooms[at % Rooms.Length]);

    public string Flow(string what) => Fit(what);

    /// <summary>A name of the language; some people write what the thing is.</summary>
    public string Id(string prefix, int at)
        => names == InventedNames.LongIds
            ? FormattableString.Invariant($"{prefix}-{Any(Work).ToLowerInvariant()}-number-{at}")
            : FormattableString.Invariant($"{prefix}{at}");

    private string Fit(string text) => names switch
    {
        InventedNames.SixtyLetters => Filled(text)[..Longest].Trim().PadRight(Longest, 'x'),
        InventedNames.OneWordOfSixty => Filled(text).Replace(" ", "", StringComparison.Ordinal).PadRight(Longest, 'm')[..Longest],
        _ => random.Next(4) == 0 ? $"{text} {Any(More)}" : text,
    };

    private string Filled(string text)
    {
        while (text.Length < Longest)
        {
            text += " " + Any(More);
        }

        return text;
    }

    private string Any(string[] from) => from[random.Next(from.Length)];
}

/// <summary>What kind of names a plan has.</summary>
internal enum InventedNames
{
    Usual,
    LongIds,
    SixtyLetters,
    OneWordOfSixty,
}
