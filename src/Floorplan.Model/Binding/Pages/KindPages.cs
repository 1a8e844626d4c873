using Floorplan.Language.Diagnostics.Pages;

namespace Floorplan.Model.Binding.Pages;

/// <summary>Kinds, and the files that they come from.</summary>
internal static class KindPages
{
    private const string Kind = "kind bench\n  size 1200 x 600 x 900\n";
    private const string Station = "\nstation b1 \"Bench\" like bench in wet, corner south-west";

    public static IReadOnlyList<DiagnosticPage> All { get; } =
    [
        new("unknown-kind",
            "The station takes its details from a kind that neither the plan nor a file that it uses describes.",
            Kind + "station b1 \"Bench\" like bensh in wet, 1200 x 600 x 900, corner south-west",
            Kind + "station b1 \"Bench\" like bench in wet, 1200 x 600 x 900, corner south-west")
        { Around = Setting.Rooms },
        new("kind-circle",
            "Kinds take their details from one another in a circle.",
            "kind bench like table\n  size 1200 x 600 x 900\nkind table like bench" + Station,
            "kind bench like table\n  size 1200 x 600 x 900\nkind table" + Station)
        { Around = Setting.Rooms },
        new("kind-too-deep",
            "Kinds take their details from more than 8 kinds in a row. Nobody can tell any more where a detail comes from.",
            "kind k1 like k2\nkind k2 like k3\n…\nstation b1 \"Bench\" like k1 in wet, corner south-west",
            Kind + Station[1..])
        {
            Around = Setting.Rooms,
            WrongInFull = ()
                => string.Concat(Enumerable.Range(1, 12).Select(i => $"kind k{i} like k{i + 1}\n")) + "kind k13\n"
                    + "station b1 \"Bench\" like k1 in wet, 1200 x 600 x 900, corner south-west",
        },
        new("kinds-not-read",
            "The file that a `kinds from` line names cannot be read: it is not there, it is not below the plan's folder, or the shelf "
                + "has no such part.",
            "kinds from parts/fisch",
            "kinds from parts/fish")
        { Around = Setting.Rooms },
        new("kinds-circle",
            "A file reads kinds from itself, by way of the files that it reads from.",
            "kinds from benches.unit\n# and in benches.unit: kinds from benches.unit" + Station,
            "kinds from benches.unit" + Station)
        {
            Around = Setting.Rooms,
            Files = new Dictionary<string, string> { ["benches.unit"] = "kinds from benches.unit\n" + Kind },
            FilesMended = new Dictionary<string, string> { ["benches.unit"] = Kind },
        },
        new("kinds-too-deep",
            "Files read kinds from files more than 8 deep. Read the last one from the plan itself.",
            "kinds from k1.unit\n# and k1.unit reads from k2.unit, and so on",
            "kinds from k12.unit" + Station)
        {
            Around = Setting.Rooms,
            Files = Enumerable.Range(1, 12).ToDictionary(i => $"k{i}.unit", i => i < 12 ? $"kinds from k{i + 1}.unit\n" : Kind),
        },
        new("kinds-too-many",
            "A plan reads kinds from at most 64 files.",
            "kinds from k1.unit\nkinds from k2.unit\n…",
            "kinds from k1.unit" + Station)
        {
            Around = Setting.Rooms,
            WrongInFull = () => string.Concat(Enumerable.Range(1, 65).Select(i => $"kinds from k{i}.unit\n")),
            Files = Enumerable.Range(1, 65).ToDictionary(i => $"k{i}.unit", i => i == 1 ? Kind : ""),
        },
        new("kinds-too-long",
            "The files that a plan reads kinds from hold at most 4 million characters together, some thousand kinds.",
            "kinds from k1.unit\nkinds from k2.unit\n…",
            "kinds from k1.unit" + Station)
        {
            Around = Setting.Rooms,
            WrongInFull = () => string.Concat(Enumerable.Range(1, 5).Select(i => $"kinds from k{i}.unit\n")),
            Files = Enumerable.Range(1, 5).ToDictionary(i => $"k{i}.unit", i => (i == 1 ? Kind : "") + new string(' ', 900_000)),
        },
        new("kinds-give-too-much",
            "The things of a plan take at most 200 000 details from kinds together. Mostly a line of a kind was copied again and again.",
            "kind bench\n  size 1200 x 600 x 900\n  clear south 10\n…\nstation b1 like bench in wet, corner south-west\n…",
            Kind + Station[1..])
        {
            Around = Setting.Rooms,
            WrongInFull = () => Kind + string.Concat(Enumerable.Repeat("  clear south 10\n", 1_900))
                + string.Concat(Enumerable.Range(0, 106)
                    .Select(i => $"station b{i} like bench in wet, {i + 1} x 600 x 900, at {i * 2}, 0, turned 0\n")),
        },
        new("only-kinds-are-read",
            "Of a file that a `kinds from` line names only the kinds are taken. Everything else in it has no effect.",
            "kinds from benches.unit\n# and in benches.unit: store rack \"Rack\" in wet, 900 x 500 x 1800, corner north-west" + Station,
            "kinds from benches.unit" + Station)
        {
            Around = Setting.Rooms,
            Files = new Dictionary<string,
                string> { ["benches.unit"] = Kind + "store rack \"Rack\" in wet, 900 x 500 x 1800, corner north-west\n" },
            FilesMended = new Dictionary<string, string> { ["benches.unit"] = Kind },
        },
    ];
}
