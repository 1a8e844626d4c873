using Floorplan.Language.Parsing;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Tokens;

namespace Floorplan.Language.Details.Services;

/// <summary>Figures that say what a point is made for, such as <c>100 A 230 V</c>. They have no word of their own.</summary>
internal static class Ratings
{
    /// <param name="kinds">The kinds of quantities that rate this point.</param>
    public static Detail<RatingSyntax> Of(IReadOnlyList<QuantityKind> kinds, params IReadOnlyList<string> examples) =>
        new("rating", "what it is made for", examples, c => Read(c, kinds)) { Repeatable = true, RunsOn = true };

    /// <summary>A number and, somewhere before the next comma, a unit that is not of length; not a distance from a side.</summary>
    public static bool StandHere(Cursor c)
    {
        if (!c.AtNumber || c.PhraseHolds("from"))
        {
            return false;
        }

        for (int ahead = 0; c.KindAt(ahead) is { } kind && kind != TokenKind.Comma; ahead++)
        {
            if (kind == TokenKind.Word && UnitTable.Find(c.TextAt(ahead)) is { Kind: not QuantityKind.Length })
            {
                return true;
            }
        }

        return false;
    }

    private static RatingSyntax Read(Cursor c, IReadOnlyList<QuantityKind> kinds)
    {
        var amounts = new List<QuantitySyntax>();
        do
        {
            if (c.Quantity("a rating", kinds) is { } amount)
            {
                amounts.Add(amount);
            }
        }
        while (!c.Failed && c.AtNumber);
        return new RatingSyntax(amounts);
    }
}
