using Floorplan.Language.Parsing;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Details;

/// <summary>Details of the usual forms: a length, a quantity, words, or the bare word itself.</summary>
internal static class Forms
{
    /// <param name="what">For the message, when no length stands there.</param>
    public static Detail<LengthSyntax> Length(string word, string says, string what, params IReadOnlyList<string> examples) =>
        new(word, says, examples, c => c.Length(what));

    public static Detail<QuantitySyntax> Quantity(
        string word,
        string says,
        string what,
        IReadOnlyList<QuantityKind> kinds,
        params IReadOnlyList<string> examples) =>
        new(word, says, examples, c => c.Quantity(what, kinds));

    public static Detail<TextSyntax> Text(string word, string says, string what, params IReadOnlyList<string> examples) =>
        new(word, says, examples, c => c.Words(what));

    /// <summary>Said by its words alone. Its only example is the word itself.</summary>
    public static Detail<WordSyntax> Mark(string word, string says) => new(word, says, [word], c => new WordSyntax(word, c.Before));

    public static BareForm Place(Detail<PlaceTerm> detail) =>
        new(
            detail,
            c => PlaceParser.Starts(c) && (!c.AtNumber || c.PhraseHolds("from")),
            PlaceParser.Term)
        { MayStart = PlaceParser.Starts };

    /// <summary>A phrase that starts with a number and has an <c>x</c> before any <c>from</c>.</summary>
    public static bool SizeStandsHere(Cursor c)
    {
        if (!c.AtNumber)
        {
            return false;
        }

        for (int ahead = 0; c.KindAt(ahead) is { } kind && kind != Tokens.TokenKind.Comma; ahead++)
        {
            if (c.IsWord("from", ahead))
            {
                return false;
            }

            if (c.IsWord("x", ahead) || c.TextAt(ahead) == "×")
            {
                return true;
            }
        }

        return false;
    }

    /// <summary><c>in filleting</c>, but not <c>in line with bench</c>.</summary>
    public static bool RoomStandsHere(Cursor c) => c.IsWord("in") && !c.IsWord("line", 1);

    public static NameSyntax? Room(Cursor c) => c.Name("the name of a room");

    /// <summary>A detail whose word <c>in</c> begins a place too, so that it is known only by what follows.</summary>
    public static BareForm In(Detail<NameSyntax> detail) => new(detail, RoomStandsHere, c =>
    {
        c.Skip();
        return detail.Read(c);
    });

    /// <summary><c>north wall</c></summary>
    public static bool WallStandsHere(Cursor c) => c.AtSide() && c.IsWord("wall", 1);

    public static SideSyntax? Wall(Cursor c)
    {
        var wall = c.Side("a wall");
        c.Skip();
        return wall;
    }
}
