using Floorplan.Language.Details;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Parsing.Statements;

internal sealed class KindsFromParser : StatementParser<KindsFromStatement>
{
    public override IReadOnlyList<Detail> Details => [];

    protected override KindsFromStatement Make(WordSyntax keyword) => new() { Keyword = keyword };

    protected override void Head(KindsFromStatement s, Cursor c)
    {
        if (c.Expect("from"))
        {
            s.Path = c.Words("a shelf of parts such as `parts/fish`, or a file name in quotes");
        }
    }
}
