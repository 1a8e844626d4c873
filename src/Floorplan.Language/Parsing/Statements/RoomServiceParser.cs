using Floorplan.Language.Details;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Tokens;

namespace Floorplan.Language.Parsing.Statements;

/// <summary>Light and air of whole rooms.</summary>
internal sealed class RoomServiceParser : StatementParser<RoomServiceStatement>
{
    private static readonly BareForm[] WithoutWord =
        [new(RoomServiceDetails.Level, c => c.Kind == TokenKind.Word, RoomServiceDetails.Level.Read) { MayStart = _ => true }];

    public override IReadOnlyList<Detail> Details => RoomServiceDetails.All;

    public override IReadOnlyList<BareForm> Bare => WithoutWord;

    protected override RoomServiceStatement Make(WordSyntax keyword) => new() { Keyword = keyword };

    protected override void Head(RoomServiceStatement s, Cursor c)
    {
        if (s.Keyword.Text == "light")
        {
            var start = c.Here;
            var level = RoomServiceDetails.Level.Read(c);
            Keep(s, c, RoomServiceDetails.Level, "", start, level);
        }
        else if (!TryInHead(s, c, RoomServiceDetails.Supply) && !TryInHead(s, c, RoomServiceDetails.Exhaust))
        {
            c.Word("a direction of air", "supply", "exhaust");
        }
    }
}
