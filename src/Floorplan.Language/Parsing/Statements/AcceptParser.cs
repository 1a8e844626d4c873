using Floorplan.Language.Details;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Tokens;

namespace Floorplan.Language.Parsing.Statements;

internal sealed class AcceptParser : StatementParser<AcceptStatement>
{
    public override IReadOnlyList<Detail> Details => AcceptDetails.All;

    protected override AcceptStatement Make(WordSyntax keyword) => new() { Keyword = keyword };

    protected override void Head(AcceptStatement s, Cursor c)
    {
        s.Name = c.Name("the name of a rule");
        if (c.Try("at"))
        {
            do
            {
                if (c.Name("the name of a thing") is { } thing)
                {
                    s.At.Add(thing);
                }
            }
            while (c.Try("and") || c.NextInList(n => n.Kind == TokenKind.Word));
        }

        s.Reason = c.Failed ? null : c.Text("the reason");
        TryInHead(s, c, AcceptDetails.By);
    }
}
