using Floorplan.Model;

namespace Floorplan.Checks.Measuring;

/// <summary>What a plan makes, by the words for its products and in its title.</summary>
internal static class ProductWords
{
    private static readonly string[] Birds =
        ["bird", "hen", "chicken", "duck", "goose", "geese", "turkey", "quail", "pheasant", "partridge", "poultry", "rabbit", "hare"];

    private static readonly string[] Animals =
    [
        "lamb", "sheep", "goat", "kid", "pig", "calf", "calves", "cattle", "cow", "deer", "boar", "carcass", "carcasses", "venison",
        "meat", "beef", "pork", "mutton", "game",
    ];

    private static readonly string[] FishWords =
        ["fish", "trout", "char", "salmon", "carp", "eel", "perch", "pike", "cod", "herring", "fillet", "mussel", "crab"];

    public static bool IsPoultry(Plan plan) => Says(plan, Birds);

    public static bool IsMeat(Plan plan) => Says(plan, Animals) && !IsMilk(plan) && !IsCheese(plan);

    public static bool IsFish(Plan plan) => Says(plan, FishWords);

    public static bool IsMilk(Plan plan) => Says(plan, ["milk"]) && !IsCheese(plan);

    private static bool IsCheese(Plan plan) => Says(plan, ["cheese", "curd", "yogurt", "yoghurt"]);

    private static bool Says(Plan plan, string[] words) => plan.Head.Products.Select(p => p.Unit).Append(plan.Head.Title)
        .SelectMany(text => text.Split(Separators, StringSplitOptions.RemoveEmptyEntries))
        .Any(word => words.Any(w => word.Equals(w, StringComparison.OrdinalIgnoreCase)
            || word.Equals(w + "s", StringComparison.OrdinalIgnoreCase)));

    private static readonly char[] Separators = [' ', '-', ',', '.', '\'', '"', '/'];
}
