using Floorplan.Language.Details;
using Floorplan.Language.Details.Services;
using Floorplan.Language.Syntax.Statements.Services;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Tokens;

namespace Floorplan.Language.Parsing.Statements.Services;

/// <summary>The light of whole rooms, one after another.</summary>
internal sealed class LightParser : StatementParser<LightStatement>
{
    private static readonly BareForm[] WithoutWord =
        [new(LightDetails.Level, c => c.Kind == TokenKind.Word, LightDetails.Level.Read) { MayStart = _ => true }];

    public override IReadOnlyList<Detail> Details => [];

    public override IReadOnlyList<BareForm> Bare => WithoutWord;

    protected override LightStatement Make(WordSyntax keyword) => new() { Keyword = keyword };

    protected override void Head(LightStatement s, Cursor c)
    {
        var start = c.Here;
        var level = LightDetails.Level.Read(c);
        Keep(s, c, LightDetails.Level, "", start, level);
    }
}
