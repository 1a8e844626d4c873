using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Words;

namespace Floorplan.Language.Parsing;

/// <summary>Code, country and plant of one plan fit each other, so that no figure binds where it cannot.</summary>
internal static class PlaceWords
{
    public static void Compare(List<Statement> statements, Mistakes mistakes)
    {
        foreach (var plan in statements.OfType<PlanStatement>())
        {
            string? code = plan.Code?.Text;
            if (plan.Country is { } country && code is not null && Fits(country.Text) is { } fits && !fits.Contains(code))
            {
                mistakes.Add(
                    "country-not-of-code", $"`code {code}` does not fit {Countries.Names[country.Text]}", country.Span,
                    $"write `code {fits[0]}`, or leave the code out: the country says it");
            }
            else if (plan.Plant is { } plant
                && (code is not (null or "us") || (plan.Country is { } at && !Countries.IsAmerican(at.Text))))
            {
                mistakes.Add(
                    "plant-not-us", $"`plant {plant.Text}` is of the United States, and this plan is not", plant.Span,
                    "take it out, or write `code us`");
            }
        }
    }

    /// <summary>The codes that a country may stand beside, its own first; of others those of Europe may be wished for.</summary>
    private static string[] Fits(string country)
        => Countries.IsAmerican(country) ? ["us"] : Countries.IsEuropean(country) ? ["eu"] : ["none", "eu"];
}
