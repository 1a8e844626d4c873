using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Tokens;

namespace Floorplan.Language.Parsing.Statements;

internal sealed class SheetParser : StatementParser<SheetStatement>
{
    public override IReadOnlySet<string> NotYetUsed { get; } = new HashSet<string> { "shows" };

    protected override IReadOnlyDictionary<string, Action<SheetStatement, Cursor>> Handlers { get; } = new Dictionary<string, Action<SheetStatement, Cursor>>
    {
        ["paper"] = (s, c) => s.Paper = c.Words("a paper size such as A3 or 11 x 17 in"),
        ["scale"] = Scale,
        ["shows"] = Shows,
    };

    protected override SheetStatement Make(WordSyntax keyword) => new() { Keyword = keyword };

    protected override void Head(SheetStatement s, Cursor c)
    {
        if (!c.Try("all"))
        {
            s.Number = c.Number("a sheet number, or `all`");
        }
    }

    private static void Scale(SheetStatement s, Cursor c)
    {
        if (c.Number("a scale such as 1:25") is not { } one)
        {
            return;
        }

        if (c.Kind != TokenKind.Colon || one.Value != 1)
        {
            c.Error("not-a-scale", "a scale is written 1:25", one.Span);
            return;
        }

        c.Skip();
        s.Scale = c.Number("the second half of the scale");
    }

    private static void Shows(SheetStatement s, Cursor c)
    {
        do
        {
            if (c.Word("what to show") is { } word)
            {
                s.Shows.Add(word);
            }
        }
        while (c.NextInList(n => n.Kind == TokenKind.Word && !n.IsWord("paper") && !n.IsWord("scale")));
    }
}
