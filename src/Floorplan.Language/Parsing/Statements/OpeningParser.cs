using Floorplan.Language.Details;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Parsing.Statements;

/// <summary>Doors, hatches, windows, openings, chutes and vents.</summary>
internal sealed class OpeningParser : StatementParser<OpeningStatement>
{
    private static readonly BareForm[] WithoutWord =
    [
        new(OpeningDetails.Wall, Forms.WallStandsHere, Forms.Wall),
        new(OpeningDetails.Size, Forms.SizeStandsHere, OpeningDetails.Size.Read),
        Forms.Place(OpeningDetails.Place),
    ];

    public override IReadOnlyList<Detail> Details => OpeningDetails.All;

    public override IReadOnlyList<BareForm> Bare => WithoutWord;

    protected override OpeningStatement Make(WordSyntax keyword) => new() { Keyword = keyword };

    protected override void Head(OpeningStatement s, Cursor c)
    {
        s.Name = c.Name($"the {s.Keyword.Text}'s name");
        s.Label = c.TryText();
        if (c.Failed)
        {
            return;
        }

        s.First = c.Name("a room, or `outside`");
        s.Second = s.First is not null && c.Expect("to") ? c.Name("a room, or `outside`") : null;
    }
}
