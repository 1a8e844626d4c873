using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Parsing;

/// <summary>
/// Things may be counted in any word (crates, shelves), so a slip in the product's own name would pass unseen. Words that
/// look like the product's name and are not it are warned of.
/// </summary>
internal static class ProductUnits
{
    public static void Compare(List<Statement> statements, Mistakes mistakes)
    {
        var products = statements.OfType<PlanStatement>().SelectMany(p => p.Products).Select(p => p.Unit.Text).Distinct().ToList();
        if (products.Count == 0)
        {
            return;
        }

        foreach (var counted in statements.SelectMany(Counted))
        {
            string word = counted.Value.Unit.Symbol.Split('/')[0];
            if (word.Length > 0 && !products.Exists(p => Same(p, word)) && NearNames.Hint(word, products) is { } hint)
            {
                mistakes.Warn("unknown-product", $"`{word}` is not the plan's product", counted.Span, hint);
            }
        }
    }

    private static IEnumerable<QuantitySyntax> Counted(Statement statement)
    {
        QuantitySyntax?[] all = statement switch
        {
            StationStatement s => [s.Batch, s.Holds],
            DayStatement d => [d.Target],
            _ => [],
        };
        return all.OfType<QuantitySyntax>().Where(q => q.Value.Unit.Kind is QuantityKind.Count or QuantityKind.Rate);
    }

    /// <summary>One bird, two birds.</summary>
    private static bool Same(string product, string word) => Stem(product).Equals(Stem(word), StringComparison.OrdinalIgnoreCase);

    private static string Stem(string word) => word.EndsWith('s') ? word[..^1] : word;
}
