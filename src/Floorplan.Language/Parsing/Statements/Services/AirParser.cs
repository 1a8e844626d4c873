using Floorplan.Language.Details;
using Floorplan.Language.Details.Services;
using Floorplan.Language.Syntax.Statements.Services;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Parsing.Statements.Services;

/// <summary>The air of whole rooms, one after another.</summary>
internal sealed class AirParser : StatementParser<AirStatement>
{
    public override IReadOnlyList<Detail> Details => AirDetails.All;

    protected override AirStatement Make(WordSyntax keyword) => new() { Keyword = keyword };

    protected override void Head(AirStatement s, Cursor c)
    {
        if (!TryInHead(s, c, AirDetails.Supply) && !TryInHead(s, c, AirDetails.Exhaust))
        {
            c.Word("a direction of air", [.. AirDetails.All.Select(d => d.Word)]);
        }
    }
}
