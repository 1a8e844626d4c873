using Floorplan.Language.Parsing;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Tokens;

namespace Floorplan.Language.Details;

/// <summary>What a water point, drain, hose, panel, outlet, switch, heater or hole may say.</summary>
public static class ServiceDetails
{
    internal static readonly string[] PlainWords =
        ["cold", "hot", "floor", "roof", "trench", "sink", "single-phase", "three-phase", "one-way", "two-way", "gfci", "rcd", "sealed", "instant", "tank"];

    /// <summary>A hose hangs where its water point is.</summary>
    private static readonly string[] Placed = ["water", "drain", "panel", "outlet", "switch", "heater", "hole"];

    private static readonly QuantityKind[] RatingKinds =
        [QuantityKind.Current, QuantityKind.Voltage, QuantityKind.Power, QuantityKind.Flow, QuantityKind.Volume, QuantityKind.Temperature, QuantityKind.Pressure];

    public static Detail<NameSyntax> Room { get; } = new("in", "the room that it is in", ["in filleting", "in receiving"], Forms.Room);

    public static Detail<NameSyntax> On { get; } = new("on", "the water point that a hose hangs on", ["on w1", "on w2"], c => c.Name("the name of a water point"));

    public static Detail<SideSyntax> Wall { get; } = new("wall", "the wall that it is on, as `north wall`", ["south wall", "north wall"], Forms.Wall) { Of = Placed };

    public static Detail<PlaceTerm> Place { get; } = new(
        "place", "where it is", ["place 1510 from west, 410 from south", "place 1530 from west, 410 from south"], PlaceParser.Term) { BareRepeats = true, Of = Placed };

    public static Detail<LengthSyntax> Height { get; } = Forms.Length(
        "height", "its height above the finished floor", "a height above the floor", "height 1210", "height 1230");

    public static Detail<LengthSyntax> OutletBelow { get; } = new(
        "outlet", "how far the outlet of a drain lies below the floor", ["outlet 151 below floor", "outlet 153 below floor"], OutletOf) { Of = ["drain"] };

    public static Detail<NameSyntax> RunsTo { get; } = new(
        "runs to", "the drain that its line comes to next", ["runs to fd1", "runs to fd2"], c => c.Name("the name of a drain")) { Of = ["drain"] };

    /// <summary>A length that stands alone: the size of a drain or pipe, the length of a hose.</summary>
    public static Detail<LengthSyntax> Size { get; } = new(
        "size", "the size of the pipe or drain, or the length of the hose", ["size 101", "size 103"], c => c.Length("a size"))
    {
        Of = ["water", "drain", "hose", "panel", "outlet", "switch", "heater"],
    };

    public static Detail<SizeSyntax> HoleSize { get; } = new(
        "size", "its diameter, or two sides", ["size 51", "size 410 x 310", "size 430 x 310"], c => c.Size("the diameter of the hole, or two sides", 1, 2)) { Of = ["hole"] };

    public static Detail<TextSyntax> Circuit { get; } = new(
        "circuit", "the number of the circuit that it is on", ["circuit 4", "circuit 7"], c => c.Words("the number of a circuit")) { Of = ["outlet", "switch", "heater"] };

    public static Detail<WordSyntax> VacuumBreaker { get; } = Guard("vacuum breaker", "air comes in before used water is sucked back");

    public static Detail<WordSyntax> BackflowPreventer { get; } = Guard("backflow preventer", "a valve keeps used water from flowing back");

    /// <summary>One of the words of a service, such as <c>cold</c>, <c>trench</c> or <c>gfci</c>.</summary>
    public static Detail<WordSyntax> Word { get; } = new("word", "what it is, in one of the words of the trade", ["cold", "hot"], PlainWord) { Repeatable = true };

    public static Detail<RatingSyntax> Rating { get; } = new(
        "rating", "what it is made for", ["100 A 230 V single-phase", "110 A 230 V single-phase", "110 A 230 V three-phase"], RatingOf) { Repeatable = true };

    public static IReadOnlyList<Detail> All { get; } = [Place, Height, Size, HoleSize, OutletBelow, RunsTo, Circuit, VacuumBreaker, BackflowPreventer];

    internal static bool WordStandsHere(Cursor c) => c.Kind == TokenKind.Word && PlainWords.Contains(c.Current.ToLowerInvariant());

    /// <summary>A number and, somewhere before the next comma, a unit of a rating; not a distance from a side.</summary>
    internal static bool RatingStandsHere(Cursor c)
    {
        bool rating = false;
        for (int ahead = 0; c.AtNumber && c.KindAt(ahead) is { } kind && kind != TokenKind.Comma; ahead++)
        {
            if (c.IsWord("from", ahead))
            {
                return false;
            }

            rating |= kind == TokenKind.Word && UnitTable.Find(c.TextAt(ahead)) is { } unit && RatingKinds.Contains(unit.Kind);
        }

        return rating;
    }

    internal static bool SizeStandsHere(Cursor c) => c.AtNumber && !c.PhraseHolds("from") && !RatingStandsHere(c);

    private static Detail<WordSyntax> Guard(string word, string says) =>
        new(word, says, [word], c => new WordSyntax(word, c.Before)) { Of = ["water", "hose"] };

    private static LengthSyntax? OutletOf(Cursor c)
    {
        var below = c.Length("how far the outlet lies below the floor");
        _ = below is not null && c.Expect("below") && c.Expect("floor");
        return below;
    }

    private static WordSyntax PlainWord(Cursor c)
    {
        var word = new WordSyntax(c.Current.ToLowerInvariant(), c.Here);
        c.Skip();
        return word;
    }

    private static RatingSyntax RatingOf(Cursor c)
    {
        var amounts = new List<QuantitySyntax>();
        var words = new List<WordSyntax>();
        while (!c.Failed && !c.AtPhraseEnd)
        {
            if (WordStandsHere(c))
            {
                words.Add(PlainWord(c));
            }
            else if (c.Quantity("a rating", RatingKinds) is { } amount)
            {
                amounts.Add(amount);
            }
        }

        return new RatingSyntax(amounts, words);
    }
}
