using Floorplan.Language.Details;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Parsing.Statements;

internal sealed class PlanParser : StatementParser<PlanStatement>
{
    public override IReadOnlyList<Detail> Details => PlanDetails.All;

    protected override PlanStatement Make(WordSyntax keyword) => new() { Keyword = keyword };

    protected override void Head(PlanStatement statement, Cursor c) => statement.Label = c.Text("the plan's title");
}
