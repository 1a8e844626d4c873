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
        CompareFor(statements, products, mistakes);
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

    /// <summary>What differs for a product is of a product that there is.</summary>
    private static void CompareFor(List<Statement> statements, List<string> products, Mistakes mistakes)
    {
        var named = statements.SelectMany(s => s.Details).Select(d => d.Value).OfType<ForProductSyntax>().Select(f => f.Product)
            .Concat(statements.OfType<FlowStatement>().Select(f => f.Product).OfType<NameSyntax>());
        foreach (var product in named.Where(n => !products.Exists(p => p.Equals(n.Text, StringComparison.OrdinalIgnoreCase))))
        {
            mistakes.Add(
                "unknown-product", $"`{product.Text}` is not a product of the plan", product.Span,
                NearNames.Hint(product.Text, products) ?? $"write `product {product.Text}` in the plan's head, with what one weighs");
        }
    }

    private static IEnumerable<QuantitySyntax> Counted(Statement statement)
    {
        foreach (var detail in statement.Details)
        {
            var quantity = detail.Value switch { QuantitySyntax q => q, TargetSyntax t => t.Amount, _ => null };
            if (quantity is { Value.Unit.Kind: QuantityKind.Count or QuantityKind.Rate })
            {
                yield return quantity;
            }
        }
    }

    /// <summary>One bird, two birds.</summary>
    private static bool Same(string product, string word) => Stem(product).Equals(Stem(word), StringComparison.OrdinalIgnoreCase);

    private static string Stem(string word) => word.EndsWith('s') ? word[..^1] : word;
}
