using Floorplan.Language.Details;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Parsing.Statements;

internal sealed class RoomParser : StatementParser<RoomStatement>
{
    private static readonly string[] Classes = ["dirty", "clean", "cold", "dry", "staff", "plant", "toilet"];

    private static readonly BareForm[] WithoutWord = [Forms.In(RoomDetails.In), Forms.Place(RoomDetails.Place)];

    public override IReadOnlyList<Detail> Details => RoomDetails.All;

    public override IReadOnlyList<BareForm> Bare => WithoutWord;

    protected override RoomStatement Make(WordSyntax keyword) => new() { Keyword = keyword };

    protected override void Head(RoomStatement s, Cursor c)
    {
        s.Name = c.Name("the room's name");
        s.Label = c.TryText();
        if (c.Failed)
        {
            return;
        }

        s.Class = c.Word("a hygiene class", Classes);
        if (TryInHead(s, c, RoomDetails.Slice)
            || !TryInHead(s, c, RoomDetails.Area)
            || s.Area is null
            || c.AtPhraseEnd
            || !PlaceParser.Starts(c))
        {
            return;
        }

        var start = c.Here;
        var place = PlaceParser.Term(c);
        Keep(s, c, RoomDetails.Place, "", start, place);
    }
}
