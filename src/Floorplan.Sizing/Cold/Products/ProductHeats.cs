using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Cold.Products;

/// <summary>Foods by the word that a plan has for its product.</summary>
internal static class ProductHeats
{
    private static readonly Source Geankoplis = new("specific heats of foods, Geankoplis, appendix A.4", Origin.FoundInPublicCopy);
    private static readonly Source UnitOperations = new("Unit Operations in Food Processing, appendix 7, NZIFST", Origin.FoundInPublicCopy);
    private static readonly Source Vegetables = new("ASHRAE Refrigeration 2006, chapter 9, table 3", Origin.FoundInPublicCopy);
    private static readonly Source ByWater = new(
        "c = 4.19 p + 0.84 (1 − p) for food with 82 % of water, NZIFST; that share is an own assumption", Origin.OwnAssumption);

    private static readonly FoodParts Bird = new(0.66, 0.186, 0.151, 0, 0.008);
    private static readonly FoodParts Red = new(0.582, 0.175, 0.241, 0, 0.008);
    private static readonly FoodParts WhiteFish = new(0.812, 0.178, 0.007, 0, 0.012);

    /// <summary>Taken where the word is not known.</summary>
    public static ProductHeat Unknown { get; } = new("food", 3.59, 1.87, 274, -1, ByWater);

    private static readonly (string[] Beginnings, ProductHeat Heat)[] Known =
    [
        (
            ["bird", "chicken", "hen", "broiler", "duck", "goose", "geese", "turkey", "quail", "pheasant", "guinea", "poultry"],
            new("poultry", 3.31, 1.55, 247, -2.8, Geankoplis) { Parts = Bird }),
        (["fish", "trout", "salmon", "char", "cod", "haddock", "herring", "tilapia"], Meat("fish", 3.18, 1.67, 276, WhiteFish)),
        (["pork", "pig", "hog"], Meat("pork", 2.85, 1.59, 197, Red)),
        (["lamb", "sheep", "goat", "mutton"], Meat("lamb", 3.18, 1.67, 276, Red)),
        (["beef", "cattle", "carcas", "deer", "venison", "side", "quarter", "joint"], Meat("red meat", 3.22, 1.67, 255, Red)),
        (["milk", "cream", "yogurt", "yoghurt"], new("milk", 3.9, 2.05, 289, -0.6, UnitOperations)),
        (["egg"], new("eggs", 3.2, 1.67, 276, -0.6, UnitOperations)),
        (["apple"], new("apples", 3.60, 1.88, 280, -1.1, UnitOperations)),
        (["tomato"], new("tomatoes", 3.98, 2.01, 310, -0.5, UnitOperations)),
        (["carrot"], new("carrots", 3.92, 2.00, 293, -1.4, Vegetables)),
        (["broccoli"], new("broccoli", 4.01, 1.82, 303, -0.6, Vegetables)),
        (["cabbage"], new("cabbage", 4.02, 1.85, 308, -0.9, Vegetables)),
        (["lettuce", "salad", "leaves"], new("lettuce", 4.09, 1.65, 320, -0.2, Vegetables)),
        (["cucumber"], new("cucumbers", 4.09, 1.71, 321, -0.5, Vegetables)),
        (["corn"], new("sweet corn", 3.62, 1.98, 254, -0.6, Vegetables)),
        (["garlic"], new("garlic", 3.17, 2.19, 196, -0.8, Vegetables)),
        (["mushroom"], new("mushrooms", 3.99, 1.84, 307, -0.9, Vegetables)),
    ];

    /// <summary>By the first food of which a word begins so.</summary>
    public static ProductHeat Of(string product)
    {
        string[] words = product.Split([' ', '-', '_', '.', '/', ','], StringSplitOptions.RemoveEmptyEntries);
        return Known.FirstOrDefault(k => k.Beginnings.Any(b => words.Any(w => w.StartsWith(b, StringComparison.OrdinalIgnoreCase)))).Heat
            ?? Unknown;
    }

    private static ProductHeat Meat(string name, double above, double below, double latent, FoodParts parts)
        => new(name, above, below, latent, -2, UnitOperations) { Parts = parts };
}
