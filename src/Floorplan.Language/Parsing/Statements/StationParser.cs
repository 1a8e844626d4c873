using Floorplan.Language.Details;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Parsing.Statements;

/// <summary>Stations, stores, bins, sinks, and kinds of them.</summary>
internal sealed class StationParser : StatementParser<StationStatement>
{
    private static readonly BareForm[] WithoutWord =
    [
        Forms.In(StationDetails.Room),
        new(StationDetails.Size, Forms.SizeStandsHere, c => c.Size("a length along the station", 2, 3)),
        Forms.Place(StationDetails.Place),
    ];

    public override IReadOnlyList<Detail> Details => StationDetails.All;

    public override IReadOnlyList<BareForm> Bare => WithoutWord;

    protected override StationStatement Make(WordSyntax keyword) => new() { Keyword = keyword };

    protected override void Head(StationStatement s, Cursor c)
    {
        s.Name = c.Name($"the {s.Keyword.Text}'s name");
        s.Label = c.TryText();
        if (c.Kind == Tokens.TokenKind.Colon)
        {
            c.Wrong("`like` and a kind", $"write `{s.Keyword.Text} {s.Name?.Text} like KIND`");
            return;
        }

        if (c.Try("like"))
        {
            s.Kind = c.Name("the name of a kind");
        }

        s.Label ??= c.TryText();
        while (!c.Failed && !c.AtPhraseEnd)
        {
            if (s.Keyword.Text == "kind" && c.IsWord("in"))
            {
                c.Error("kind-in-room", "a kind is in no room: the stations that take it are", c.Here, "end the line here");
                return;
            }

            if (TryInHead(s, c, StationDetails.Room))
            {
                return;
            }

            HeadWord(s, c);
        }
    }

    private static void HeadWord(StationStatement s, Cursor c)
    {
        if (c.AtNumber)
        {
            var start = c.Here;
            var volume = StationDetails.Volume.Read(c);
            Keep(s, c, StationDetails.Volume, "", start, volume);
        }
        else if (s.Keyword.Text is "station" or "kind" && s.Purpose.Count == 0)
        {
            c.Wrong(s.Keyword.Text == "kind"
                ? "the end of the line"
                : "`in` and a room", s.Keyword.Text == "kind"
                ? "details go on indented lines below"
                : $"write `station {s.Name?.Text} \"Label\" in ROOM`");
        }
        else if (c.Word("what it is for") is { } word)
        {
            s.Purpose.Add(word);
        }
    }
}
