using Floorplan.Language.Diagnostics;
using Floorplan.Language.Parsing;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Tokens;
using Floorplan.Language.Words;

namespace Floorplan.Language.Details;

/// <summary>Where a unit stands, what it makes and whose plant it is: which figures bind it. Words of the <c>plan</c> statement.</summary>
public static class PlaceDetails
{
    private static readonly string[] Trades = ["poultry", "red meat", "game", "fish", "dairy", "produce", "bakery", "kitchen", "eggs"];

    public static Detail<WordSyntax> Code { get; } = new(
        "code", "which published limits the checks start from", ["code us", "code eu"], c => c.Word("a code", "us", "eu", "none"));

    public static Detail<WordSyntax> Country { get; } = new(
        "country", "the country or state where it stands, whose own figures bind it too", ["country de", "country uk"], CountryOf);

    public static Detail<TradesSyntax> Trade { get; } = new(
        "trade",
        "what is made: figures of other trades do not bind it",
        ["trade poultry, red meat", "trade poultry, dairy", "trade kitchen"],
        TradesOf);

    public static Detail<WordSyntax> Plant { get; } = new(
        "plant",
        "in the United States, whose plant it is: inspected for meat and poultry, a food plant of 21 CFR 117, retail, under the milk "
            + "order, or exempt",
        ["plant inspected", "plant food"],
        c => c.Word("whose plant it is", "inspected", "food", "retail", "milk", "exempt"));

    private static WordSyntax? CountryOf(Cursor c)
    {
        if (c.Kind != TokenKind.Word)
        {
            c.Wrong("a country or state, such as `de`, `uk` or `us-wa`");
            return null;
        }

        var word = new WordSyntax(c.Current.ToLowerInvariant(), c.Here);
        if (!Countries.Names.ContainsKey(word.Text))
        {
            c.Error("unknown-word", $"{c.Found()} is not a country or state", c.Here, Countries.Hint(word.Text));
            return null;
        }

        c.Skip();
        return word;
    }

    private static TradesSyntax? TradesOf(Cursor c)
    {
        var start = c.Here;
        var all = new List<WordSyntax>();
        do
        {
            if (TradeOf(c) is { } trade)
            {
                all.Add(trade);
            }
        }
        while (!c.Failed && c.NextInList(n => n.Kind == TokenKind.Word));

        return all.Count == 0 ? null : new TradesSyntax(all, start.To(c.Before));
    }

    private static WordSyntax? TradeOf(Cursor c)
    {
        if (c.Kind != TokenKind.Word)
        {
            c.Wrong("a trade: " + NearNames.Quoted(Trades));
            return null;
        }

        var start = c.Here;
        if (c.Try("red", "meat"))
        {
            return new WordSyntax("red meat", start.To(c.Before));
        }

        string word = c.Current.ToLowerInvariant();
        if (word == "red" || !Trades.Contains(word))
        {
            string? hint = word is "meat" or "red" ? "did you mean `red meat`?" : NearNames.Hint(word, Trades);
            c.Error("unknown-word", $"{c.Found()} is not a trade", start, hint ?? $"use {NearNames.Quoted(Trades)}");
            return null;
        }

        c.Skip();
        return new WordSyntax(word, start);
    }
}
