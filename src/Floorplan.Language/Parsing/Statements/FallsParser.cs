using Floorplan.Language.Details;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Parsing.Statements;

internal sealed class FallsParser : StatementParser<FallsStatement>
{
    public override IReadOnlyList<Detail> Details => [];

    protected override FallsStatement Make(WordSyntax keyword) => new() { Keyword = keyword };

    protected override void Head(FallsStatement s, Cursor c)
    {
        s.Name = c.Name("the name of a room");
        s.Slope = s.Name is null ? null : c.Quantity("a slope", QuantityKind.Ratio);
        s.To = s.Slope is not null && c.Try("to") ? c.Name("the name of a drain") : null;
    }
}
