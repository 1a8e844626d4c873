namespace Floorplan.Checks.Rules.Hygiene;

/// <summary>What floors, walls and ceilings of food rooms are made of, as builders write it. Common practice, no source.</summary>
internal static class FinishWords
{
    public static IReadOnlySet<string> Materials { get; } = new HashSet<string>(StringComparer.OrdinalIgnoreCase)
    {
        "acrylic", "aluminium", "aluminum", "asphalt", "block", "brick", "cement", "ceramic", "coating", "concrete", "cove", "coved",
            "coving", "curb",
        "epoxy", "fibreglass", "fiberglass", "FRP", "galvanised", "galvanized", "glass", "GRP", "gypsum", "HDPE", "kerb", "laminate",
            "lining", "linoleum",
        "membrane", "metal", "mortar", "paint", "painted", "panel", "panels", "plank", "planks", "plaster", "plasterboard", "plate",
            "plastic", "plywood",
        "polycarbonate", "polyester", "polyethylene", "polypropylene", "polyurethane", "porcelain", "PVC", "quarry", "radius", "resin",
            "rubber", "screed",
        "sheet", "skirting", "slab", "stainless", "steel", "stone", "terrazzo", "tile", "tiled", "tiles", "timber", "upstand", "vinyl",
            "wood",
    };

    /// <summary>The phrases of a finish: <c>resin, coved</c> has two.</summary>
    public static string[] Phrases(string finish)
        => finish.Split([',', ';', '/'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    public static string[] Words(string phrase) => phrase.Split([' ', '-', '(', ')', '.', '+', '&'], StringSplitOptions.RemoveEmptyEntries);

    public static bool IsKnown(string phrase) => Words(phrase).Any(Materials.Contains);

    /// <summary>Whether a finish says that floor and wall meet in a round.</summary>
    public static bool IsCoved(string finish)
        => Words(finish.Replace(',', ' '))
            .Any(w => w.StartsWith("cov", StringComparison.OrdinalIgnoreCase) || w.Equals("radius", StringComparison.OrdinalIgnoreCase));
}
