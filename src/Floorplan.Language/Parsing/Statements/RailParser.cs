using Floorplan.Language.Details;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Parsing.Statements;

internal sealed class RailParser : StatementParser<RailStatement>
{
    private static readonly BareForm[] WithoutWord = [Forms.In(RailDetails.Room)];

    public override IReadOnlyList<Detail> Details => RailDetails.All;

    public override IReadOnlyList<BareForm> Bare => WithoutWord;

    protected override RailStatement Make(WordSyntax keyword) => new() { Keyword = keyword };

    protected override void Head(RailStatement s, Cursor c)
    {
        s.Name = c.Name("the rail's name");
        s.Label = c.TryText();
        TryInHead(s, c, RailDetails.Room);
    }
}
