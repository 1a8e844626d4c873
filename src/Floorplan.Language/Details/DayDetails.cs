using Floorplan.Language.Parsing;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Tokens;
using Floorplan.Language.Words;

namespace Floorplan.Language.Details;

/// <summary>What the <c>day</c> may say.</summary>
public static class DayDetails
{
    public static Detail<TargetSyntax> Target { get; } = new(
        "target",
        "what the unit makes, and for how long; of several products one after the other",
        ["target 121 fish/h for 5 h", "target 123 fish/h for 5 h", "target 123 fish/h for 6 h"],
        TargetOf)
    {
        Repeatable = true,
        Clashes = (a, b) => a.Amount.Value.Unit.Symbol.Split('/')[0] == b.Amount.Value.Unit.Symbol.Split('/')[0],
    };

    public static Detail<IReadOnlyList<CrewSyntax>> Crew { get; } = new(
        "crew",
        "how many people work in a room or at a station",
        ["crew receiving 3, filleting 4", "crew receiving 3, filleting 5", "crew gutting 2"],
        CrewOf);

    public static Detail<ElsewhereSyntax> Elsewhere { get; } = new(
        "elsewhere",
        "what is on the same site, but not in this unit",
        ["elsewhere 2 toilets, changing room", "elsewhere 3 toilets, changing room", "elsewhere 3 toilets"],
        ElsewhereOf);

    public static Detail<QuantitySyntax> Breaks { get; } = Time(
        "breaks",
        "how long the breaks are, all together",
        Use.Used,
        "breaks 31 min",
        "breaks 46 min");

    public static Detail<ArrivalSyntax> Arrives { get; } = new(
        "arrives",
        "how many pieces come at a time, or that all are there before work",
        ["arrives 41 fish", "arrives 46 fish", "arrives before work"],
        ArrivalOf);

    public static Detail<QuantitySyntax> StartUp { get; } = Time(
        "start-up",
        "from the first person in to the first piece: tanks are heated, ice is laid out",
        Use.Used,
        "start-up 46 min",
        "start-up 51 min");

    public static Detail<QuantitySyntax> WashDown { get; } = Time(
        "wash-down",
        "how long the crew cleans after the last piece",
        Use.Used,
        "wash-down 61 min",
        "wash-down 1.5 h");

    public static Detail<QuantitySyntax> HandWash { get; } = Time(
        "hand wash",
        "how long hands are washed on the way into a room",
        Use.Used,
        "hand wash 31 s",
        "hand wash 46 s");

    public static Detail<HelpSyntax> Helps { get; } = new(
        "helps",
        "where people of one crew help when they have nothing to do",
        ["helps gutting from filleting", "helps gutting from chill", "helps packing from chill"],
        HelpOf)
    { Repeatable = true };

    public static Detail<QuantitySyntax> Changeover { get; } = Time(
        "changeover",
        "how long a station takes to be set for the next product, where it differs",
        Use.Used,
        "changeover 16 min",
        "changeover 19 min");

    public static Detail<MoneySyntax> Rate { get; } = Money(
        "rate",
        "what water, power and the like cost",
        "rate water 2.10 per m3",
        "rate water 2.30 per m3",
        "rate power 2.30 per m3");

    public static Detail<MoneySyntax> Price { get; } = Money("price", "what a product sells for", "price fish 4.50", "price fish 4.70");

    public static IReadOnlyList<Detail> All { get; } =
        [Target, Crew, Helps, Elsewhere, Arrives, StartUp, Breaks, HandWash, WashDown, Changeover, Rate, Price];

    private static Detail<QuantitySyntax> Time(string word, string says, Use use, params string[] examples) =>
        new(word, says, examples, c => c.Quantity(says, QuantityKind.Time)) { Use = use };

    private static Detail<MoneySyntax> Money(string word, string says, params string[] examples) =>
        new(word, says, examples, MoneyOf) { Repeatable = true };

    private static TargetSyntax? TargetOf(Cursor c)
    {
        var target = c.Quantity("a target", QuantityKind.Rate, QuantityKind.Count);
        return target is null ? null : new TargetSyntax(target, c.Try("for") ? c.Quantity("how long", QuantityKind.Time) : null);
    }

    private static IReadOnlyList<CrewSyntax> CrewOf(Cursor c)
    {
        var crew = new List<CrewSyntax>();
        do
        {
            var start = c.Here;
            if (c.Name("the name of a room or station") is not { } where
                || c.Whole("how many people", 0, Bounds.MostPeople) is not { } count)
            {
                break;
            }

            crew.Add(new CrewSyntax(where, count, start.To(c.Before)));
        }
        while (c.NextInList(n => n.Kind == TokenKind.Word));
        return crew;
    }

    private static ArrivalSyntax? ArrivalOf(Cursor c)
    {
        if (c.Try("before"))
        {
            return c.Expect("work") ? new ArrivalSyntax(null) : null;
        }

        return c.Quantity("how many come at a time, or `before work`", QuantityKind.Count, QuantityKind.Mass) is { } load
            ? new ArrivalSyntax(load)
            : null;
    }

    private static HelpSyntax? HelpOf(Cursor c) =>
        c.Name("the crew that is helped") is { } where && c.Expect("from") && c.Name("the crew that helps") is { } from
            ? new HelpSyntax(where, from)
            : null;

    private static ElsewhereSyntax ElsewhereOf(Cursor c)
    {
        var elsewhere = new ElsewhereSyntax(null, false);
        do
        {
            if (c.Try("changing"))
            {
                elsewhere = elsewhere with { Changing = c.Expect("room") };
            }
            else if (c.Whole("how many toilets", 0, Bounds.MostToilets) is { } count && (c.Try("toilets") || c.Expect("toilet")))
            {
                elsewhere = elsewhere with { Toilets = count };
            }
        }
        while (!c.Failed && c.NextInList(n => n.Kind == TokenKind.Number || n.IsWord("changing")));
        return elsewhere;
    }

    private static MoneySyntax? MoneyOf(Cursor c)
    {
        var kind = new WordSyntax(c.Before.Value.ToLowerInvariant(), c.Before);
        var start = c.Before;
        return c.Name("what it is for") is { } of && c.Number("an amount of money") is { } amount
            ? new MoneySyntax(kind, of, amount, c.Try("per") ? c.Words("what it is counted in") : null, start.To(c.Before))
            : null;
    }
}
