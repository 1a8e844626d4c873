using Floorplan.Language.Details;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Parsing.Statements;

internal sealed class SheetParser : StatementParser<SheetStatement>
{
    public override IReadOnlyList<Detail> Details => SheetDetails.All;

    protected override SheetStatement Make(WordSyntax keyword) => new() { Keyword = keyword };

    protected override void Head(SheetStatement s, Cursor c)
    {
        if (!c.Try("all"))
        {
            s.Number = c.AtNumber ? c.Whole("the number of a sheet", 1, SheetDetails.LastSheet) : c.Number("a sheet number, or `all`");
        }
    }
}
