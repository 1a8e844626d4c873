using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Tokens;

namespace Floorplan.Language.Parsing.Statements;

internal sealed class DayParser : StatementParser<DayStatement>
{
    public override IReadOnlySet<string> NotYetUsed => Handlers.Keys.Where(k => k is not ("crew" or "elsewhere")).ToHashSet();

    protected override IReadOnlyDictionary<string, Action<DayStatement, Cursor>> Handlers { get; } = new Dictionary<string, Action<DayStatement, Cursor>>
    {
        ["target"] = Target,
        ["crew"] = Crew,
        ["elsewhere"] = Elsewhere,
        ["breaks"] = (s, c) => s.Breaks = c.Quantity("how long the breaks are", QuantityKind.Time),
        ["changeover"] = (s, c) => s.Changeover = c.Quantity("how long a changeover takes", QuantityKind.Time),
        ["rate"] = Money,
        ["price"] = Money,
    };

    protected override IReadOnlySet<string> Repeatable { get; } = new HashSet<string> { "rate", "price" };

    protected override DayStatement Make(WordSyntax keyword) => new() { Keyword = keyword };

    protected override void Head(DayStatement s, Cursor c)
    {
    }

    private static void Target(DayStatement s, Cursor c)
    {
        s.Target = c.Quantity("a target", QuantityKind.Rate, QuantityKind.Count);
        if (s.Target is not null && c.Try("for"))
        {
            s.Hours = c.Quantity("how long", QuantityKind.Time);
        }
    }

    private static void Crew(DayStatement s, Cursor c)
    {
        do
        {
            var start = c.Here;
            if (c.Name("the name of a room or station") is not { } where || c.Number("how many people") is not { } count)
            {
                return;
            }

            s.Crew.Add(new CrewSyntax(where, count, start.To(c.Before)));
        }
        while (c.NextInList(n => n.Kind == TokenKind.Word));
    }

    private static void Elsewhere(DayStatement s, Cursor c)
    {
        do
        {
            if (c.Try("changing"))
            {
                s.ChangingElsewhere = c.Expect("room");
            }
            else if (c.Number("how many toilets") is { } count && (c.Try("toilets") || c.Expect("toilet")))
            {
                s.ToiletsElsewhere = count;
            }
        }
        while (!c.Failed && c.NextInList(n => n.Kind == TokenKind.Number || n.IsWord("changing")));
    }

    private static void Money(DayStatement s, Cursor c)
    {
        var kind = new WordSyntax(c.Before.Value.ToLowerInvariant(), c.Before);
        var start = c.Before;
        if (c.Name("what it is for") is { } of && c.Number("an amount of money") is { } amount)
        {
            var per = c.Try("per") ? c.Words("what it is counted in") : null;
            s.Money.Add(new MoneySyntax(kind, of, amount, per, start.To(c.Before)));
        }
    }
}
