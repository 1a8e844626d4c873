using Floorplan.Language.Diagnostics.Pages;

namespace Floorplan.Model.Binding.Pages;

/// <summary>Kinds, and the files that they come from.</summary>
internal static class KindPages
{
    private const string Kind = "kind bench\n  size 1200 x 600 x 900\n";
    private const string Station = "\nstation b1 \"Bench\" : bench in wet, corner south-west";

    public static IReadOnlyList<DiagnosticPage> All { get; } =
    [
        new("unknown-kind",
            "The station takes its details from a kind that neither the plan nor a file that it uses describes.",
            Kind + "station b1 \"Bench\" : bensh in wet, 1200 x 600 x 900, corner south-west",
            Kind + "station b1 \"Bench\" : bench in wet, 1200 x 600 x 900, corner south-west")
        { Around = Setting.Rooms },
        new("kind-circle",
            "Kinds take their details from one another in a circle.",
            "kind bench : table\n  size 1200 x 600 x 900\nkind table : bench" + Station,
            "kind bench : table\n  size 1200 x 600 x 900\nkind table" + Station)
        { Around = Setting.Rooms },
        new("kind-too-deep",
            "Kinds take their details from more than 8 kinds in a row. Nobody can tell any more where a detail comes from.",
            "kind k1 : k2\nkind k2 : k3\n…\nstation b1 \"Bench\" : k1 in wet, corner south-west",
            Kind + Station[1..])
        {
            Around = Setting.Rooms,
            WrongInFull = () => string.Concat(Enumerable.Range(1, 12).Select(i => $"kind k{i} : k{i + 1}\n")) + "kind k13\n" + "station b1 \"Bench\" : k1 in wet, 1200 x 600 x 900, corner south-west",
        },
        new("cannot-use",
            "The file that a `use` line names cannot be read: it is not there, it is not below the plan's folder, or the shelf has no such part.",
            "use parts/fisch",
            "use parts/fish")
        { Around = Setting.Rooms },
        new("use-circle",
            "A file uses itself, by way of the files that it uses.",
            "use benches.plan\n# and in benches.plan: use benches.plan" + Station,
            "use benches.plan" + Station)
        {
            Around = Setting.Rooms,
            Files = new Dictionary<string, string> { ["benches.plan"] = "use benches.plan\n" + Kind },
            FilesMended = new Dictionary<string, string> { ["benches.plan"] = Kind },
        },
        new("use-too-deep",
            "Files use files more than 8 deep. Use the last one from the plan itself.",
            "use k1.plan\n# and k1.plan uses k2.plan, and so on",
            "use k12.plan" + Station)
        {
            Around = Setting.Rooms,
            Files = Enumerable.Range(1, 12).ToDictionary(i => $"k{i}.plan", i => i < 12 ? $"use k{i + 1}.plan\n" : Kind),
        },
        new("use-too-many",
            "A plan uses at most 64 files.",
            "use k1.plan\nuse k2.plan\n…",
            "use k1.plan" + Station)
        {
            Around = Setting.Rooms,
            WrongInFull = () => string.Concat(Enumerable.Range(1, 65).Select(i => $"use k{i}.plan\n")),
            Files = Enumerable.Range(1, 65).ToDictionary(i => $"k{i}.plan", i => i == 1 ? Kind : ""),
        },
        new("only-kinds-are-used",
            "Of a file that a plan uses only the kinds are taken. Everything else in it has no effect.",
            "use benches.plan\n# and in benches.plan: store rack \"Rack\" in wet, 900 x 500 x 1800, corner north-west" + Station,
            "use benches.plan" + Station)
        {
            Around = Setting.Rooms,
            Files = new Dictionary<string, string> { ["benches.plan"] = Kind + "store rack \"Rack\" in wet, 900 x 500 x 1800, corner north-west\n" },
            FilesMended = new Dictionary<string, string> { ["benches.plan"] = Kind },
        },
    ];
}
