using Floorplan.Language.Parsing;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Tokens;

namespace Floorplan.Language.Details;

/// <summary>The lines of a flow. They start with no word of the language, but with the name of their first stop.</summary>
public static class FlowDetails
{
    private static readonly string[] Carriages = ["hand", "trolley", "rail", "conveyor", "chute", "pump"];

    private static readonly string[] Loads = ["live", "liquid"];

    public static Detail<ChainSyntax> Line { get; } = new(
        "stops",
        "stops joined by `->`, how it goes, and when",
        [
            "outside -> d1 -> gutting  by trolley 610 wide 910 long, after work",
            "outside -> d1 -> gutting  by trolley 630 wide 910 long, after work",
            "outside -> d1 -> gutting  by trolley 630 wide 910 long",
            "outside -> d1 -> gutting  by hand 12 kg liquid",
            "outside -> d1 -> gutting  by hand 14 kg liquid",
            "outside -> d1 -> gutting  by hand 14 kg", "outside -> d1 -> gutting  by conveyor",
            "outside -> d1 -> gutting  by trolley 630 wide, takes 41 fish", "outside -> d1 -> gutting  by trolley 630 wide, takes 43 fish",
            "outside -> d1 -> gutting  by trolley 630 wide, takes 43 fish, 2 trolleys",
            "outside -> d1 -> gutting  by trolley 630 wide, takes 43 fish, 3 trolleys",
        ],
        LineOf)
    {
        Repeatable = true,
        Needed = Needed.Always,
        InFeet = "outside -> d1 -> gutting  by trolley 24 wide 36 long, after work",
    };

    public static IReadOnlyList<Detail> All { get; } = [Line];

    private static ChainSyntax? LineOf(Cursor c)
    {
        var start = c.Here;
        var stops = Stops(c);
        WordSyntax? carriage = null;
        WordSyntax? period = null;
        (LengthSyntax? width, LengthSyntax? length) = (null, null);
        (QuantitySyntax? load, WordSyntax? loadKind) = (null, null);
        QuantitySyntax? takes = null;
        NumberSyntax? trolleys = null;
        if (!c.Failed && c.Try("by") && (carriage = c.Word("a carriage", Carriages)) is not null && c.AtNumber)
        {
            if (carriage.Text == "hand")
            {
                (load, loadKind) = Load(c);
            }
            else
            {
                (width, length) = Size(c, carriage.Text);
            }
        }

        while (!c.AtEnd)
        {
            if (!c.AtPhraseEnd && !c.Failed && takes is null && c.Try("takes"))
            {
                takes = c.Quantity("how much goes at a time", QuantityKind.Count, QuantityKind.Mass);
            }
            else if (!c.AtPhraseEnd && !c.Failed && trolleys is null && c.AtNumber && c.IsWord("trolleys", 1))
            {
                var at = c.Here;
                trolleys = c.Whole("how many trolleys go this way", 1, Bounds.MostTrolleys);
                c.Skip();
                if (carriage?.Text != "trolley")
                {
                    c.Error(
                        "left-over", "no trolley goes this way", at.To(c.Before), "write `by trolley 600 wide` before it, or take it out");
                }
            }
            else if (!c.AtPhraseEnd && !c.Failed)
            {
                period ??= Period(c);
            }

            if (!c.AtPhraseEnd && !c.Failed)
            {
                c.Error(
                    "left-over",
                    $"expected `by`, a comma or the end of the line, found {c.Found()}",
                    c.Here,
                    "stops are joined by `->`, and how it goes stands after `by`");
            }

            c.NextPhrase();
        }

        return stops.Count > 1
            ? new ChainSyntax(stops, carriage, width, length, period, start.To(c.Before))
            {
                Load = load,
                LoadKind = loadKind,
                Takes = takes,
                Trolleys = trolleys,
            }
            : null;
    }

    private static List<NameSyntax> Stops(Cursor c)
    {
        var stops = new List<NameSyntax>();
        do
        {
            if (c.Name("the name of a station, an opening, or `outside`") is not { } stop)
            {
                break;
            }

            stops.Add(stop);
        }
        while (TakeArrow(c));

        if (stops.Count == 1 && !c.Failed)
        {
            c.Wrong("`->` and the next stop", "write `tipping -> gutting  by hand`");
        }

        return stops;
    }

    /// <summary><c>600 wide 900 long</c> of a trolley, <c>600 wide</c> of a conveyor.</summary>
    private static (LengthSyntax? Width, LengthSyntax? Length) Size(Cursor c, string carriage)
    {
        if (carriage is not ("trolley" or "conveyor"))
        {
            c.Error(
                "left-over",
                $"a {carriage} has no size in a flow",
                c.Here,
                "take it out: only a trolley or a conveyor says how wide it is");
            return (null, null);
        }

        var width = c.LengthAboveZero("a width", "a width");
        c.Expect("wide");
        if (c.Failed || !c.AtNumber || carriage == "conveyor")
        {
            return (width, null);
        }

        var length = c.LengthAboveZero("a length", "a length");
        c.Expect("long");
        return (width, length);
    }

    /// <summary><c>12 kg</c>, <c>12 kg liquid</c></summary>
    private static (QuantitySyntax? Load, WordSyntax? Kind) Load(Cursor c)
    {
        var load = c.Quantity("what one load weighs", QuantityKind.Mass);
        return (load, c.Failed || c.AtPhraseEnd ? null : c.Word("what kind of load it is", Loads));
    }

    private static bool TakeArrow(Cursor c)
    {
        if (c.Kind != TokenKind.Arrow)
        {
            return false;
        }

        c.Skip();
        return true;
    }

    private static WordSyntax? Period(Cursor c)
    {
        var word = c.Word("a time of day", "before", "during", "after");
        return word is not null && c.Expect("work") ? word : null;
    }
}
