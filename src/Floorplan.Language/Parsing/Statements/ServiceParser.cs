using Floorplan.Language.Details;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Parsing.Statements;

/// <summary>Water, drains, hoses, panels, outlets, switches, heaters and holes for pipes and cables.</summary>
internal sealed class ServiceParser : StatementParser<ServiceStatement>
{
    private static readonly BareForm[] WithoutWord =
    [
        new(ServiceDetails.Wall, Forms.WallStandsHere, Forms.Wall),
        Forms.Place(ServiceDetails.Place) with { MayStart = null },
        new(ServiceDetails.Rating, ServiceDetails.RatingStandsHere, ServiceDetails.Rating.Read),
        new(ServiceDetails.Size, ServiceDetails.SizeStandsHere, ServiceDetails.Size.Read),
        new(ServiceDetails.HoleSize, ServiceDetails.SizeStandsHere, ServiceDetails.HoleSize.Read),
        new(ServiceDetails.Word, ServiceDetails.WordStandsHere, ServiceDetails.Word.Read),
    ];

    public override IReadOnlyList<Detail> Details => ServiceDetails.All;

    public override IReadOnlyList<BareForm> Bare => WithoutWord;

    protected override ServiceStatement Make(WordSyntax keyword) => new() { Keyword = keyword };

    protected override void Head(ServiceStatement s, Cursor c)
    {
        s.Name = c.Name($"the {s.Keyword.Text}'s name");
        s.Label = c.TryText();
        while (!c.Failed && !c.AtPhraseEnd)
        {
            if (TryInHead(s, c, ServiceDetails.Room) || TryInHead(s, c, ServiceDetails.On))
            {
                return;
            }

            if (c.Word($"a word of a {s.Keyword.Text}", ServiceDetails.PlainWords) is { } word)
            {
                Keep(s, c, ServiceDetails.Word, "", word.Span, word);
            }
        }
    }
}
