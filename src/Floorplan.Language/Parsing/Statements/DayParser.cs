using Floorplan.Language.Details;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Parsing.Statements;

internal sealed class DayParser : StatementParser<DayStatement>
{
    public override IReadOnlyList<Detail> Details => DayDetails.All;

    protected override DayStatement Make(WordSyntax keyword) => new() { Keyword = keyword };

    protected override void Head(DayStatement s, Cursor c)
    {
    }
}
