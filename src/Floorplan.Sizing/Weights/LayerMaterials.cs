using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Weights;

/// <summary>
/// How heavy linings, floors and partitions are, by the words that a plan uses for them. A named board on a wall or a ceiling is taken as
/// one board of usual thickness over light insulation; a named floor is taken as solid. Both are own assumptions and printed in the
/// working.
/// </summary>
internal static class LayerMaterials
{
    private static readonly Source Bs648 = new("BS 648:1964, weights of building materials", Origin.FoundInSecondaryCopy);
    private static readonly Source Insulation = new("insulation of 35 to 45 kg/m³, as makers of panels give", Origin.FoundInPublicCopy);
    private static readonly char[] Between = [' ', '-', ',', ';', '/', '(', ')', '.', '+', '&'];

    /// <summary>Foam between two steel sheets of 0.5 mm; steel of 7850 kg/m3 is from BS 648. Within 15 %.</summary>
    public static LayerMaterial Panel { get; } = new(
        "sandwich panel", 7.85, 1, 40, new Source(
            "two steel sheets of 0.5 mm (7850 kg/m³, BS 648:1964) and foam of 35 to 45 kg/m³, as makers of panels give",
            Origin.FoundInPublicCopy));

    /// <summary>Cement and sand 1 to 3: BS 648 has 30 kg/m2 for 13 mm.</summary>
    public static LayerMaterial Screed { get; } = new("cement screed", 0, 0, 30 / 0.013, Bs648);

    /// <summary>BS 648 has 0.7 kg/m2 for each mm.</summary>
    public static LayerMaterial Plywood { get; } = new("plywood", 0, 0, 700, Bs648);

    private static readonly (string[] Words, LayerMaterial Wall, LayerMaterial Floor)[] Known =
    [
        (["terrazzo"], Solid("terrazzo", 54 / 0.025), Solid("terrazzo", 54 / 0.025)),
        (["screed", "cement", "mortar"], Screed, Screed),
        (["concrete", "slab"], Solid("concrete", 2400), Solid("concrete", 2400)),
        (["plywood", "ply"], Board("plywood", 12, 700), Plywood),
        (["timber", "wood", "softwood", "plank", "planks", "boards"], Board("softwood boards", 20, 590), Solid("softwood", 590)),
        (["gypsum", "plasterboard"], new LayerMaterial("gypsum board on insulation", 22, 13, 40, Bs648), Solid("gypsum", 22 / 0.013)),
        (
            ["FRP", "GRP", "fibreglass", "fiberglass"],
            new LayerMaterial("FRP sheet on insulation", 2.7, 1.5, 40, new Source("FRP sheet of 1.5 mm, 1800 kg/m³", Origin.FromMemory)),
            Plywood),
        (
            ["panel", "panels", "sandwich", "PIR", "PUR", "PU", "polyurethane", "steel", "stainless", "metal", "aluminium", "aluminum"],
            Panel, Plywood),
        (
            ["wool"],
            new LayerMaterial("mineral wool", 0, 0, 100, new Source("mineral wool of 40 to 100 kg/m³, the heavier end", Origin.FromMemory)),
            Screed),
        (
            ["foam", "XPS", "EPS", "insulation"], new LayerMaterial("foam", 0, 0, 40, Insulation),
            new LayerMaterial("foam", 0, 0, 40, Insulation)),
    ];

    /// <summary>The first material whose word stands in the text; null where none does.</summary>
    public static LayerMaterial? Find(string text, bool isFloor)
    {
        var words = text.Split(Between, StringSplitOptions.RemoveEmptyEntries);
        var known = Known.FirstOrDefault(k => k.Words.Any(w => words.Contains(w, StringComparer.OrdinalIgnoreCase)));
        return isFloor ? known.Floor : known.Wall;
    }

    private static LayerMaterial Solid(string name, double density) => new(name, 0, 0, density, Bs648);

    private static LayerMaterial Board(string name, double thick, double density) =>
        new($"{name} on insulation", thick * density / 1000, thick, 40, Bs648);
}
