using Floorplan.Language.Details;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Parsing.Statements;

internal sealed class PartitionsParser : StatementParser<PartitionsStatement>
{
    public override IReadOnlyList<Detail> Details => PartitionsDetails.All;

    protected override PartitionsStatement Make(WordSyntax keyword) => new() { Keyword = keyword };

    protected override void Head(PartitionsStatement s, Cursor c) => TryInHead(s, c, PartitionsDetails.Thickness);
}
