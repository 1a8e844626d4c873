using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Parsing.Statements;

/// <summary>Stations, stores, bins, sinks, and kinds of them.</summary>
internal sealed class StationParser : StatementParser<StationStatement>
{
    public override IReadOnlySet<string> NotYetUsed { get; } = new HashSet<string> { "cycle", "cost", "volume" };

    public override IReadOnlySet<string> PartlyUsed { get; } = new HashSet<string> { "work", "batch", "stays", "holds" };

    protected override IReadOnlyDictionary<string, Action<StationStatement, Cursor>> Handlers { get; } = new Dictionary<string, Action<StationStatement, Cursor>>
    {
        ["size"] = (s, c) => s.Size = c.Size("a length along the station", 2, 3),
        ["round"] = (s, c) => s.Size = c.RoundSize(),
        ["place"] = (s, c) => PlaceParser.List(c, s.Place),
        ["turned"] = (s, c) => s.Turned = Turned(c),
        ["worker"] = StationDetails.Worker,
        ["workers"] = StationDetails.Workers,
        ["work"] = StationDetails.Work,
        ["batch"] = (s, c) => s.Batch = c.Quantity("how many make a batch", QuantityKind.Count, QuantityKind.Mass, QuantityKind.Volume),
        ["cycle"] = (s, c) => s.Cycle = c.Quantity("how long a batch takes", QuantityKind.Time),
        ["stays"] = (s, c) => s.Stays = c.Quantity("how long the product stays", QuantityKind.Time),
        ["holds"] = StationDetails.Holds,
        ["needs"] = StationDetails.Needs,
        ["clear"] = StationDetails.Clear,
        ["weight"] = StationDetails.Weight,
        ["waste"] = StationDetails.Waste,
        ["cost"] = (s, c) => s.Cost = c.Words("a cost"),
        ["hung"] = StationDetails.Hung,
        ["underside"] = (s, c) => s.Underside = c.Length("the height of the underside"),
        ["on"] = (s, c) => s.OnWheels = c.Expect("wheels"),
        ["air"] = (s, c) => s.AirGap = c.Expect("gap") ? c.Length("the gap between the inlet and the rim") : null,
        ["inlet"] = (s, c) => s.Inlet = c.Length("the diameter of the inlet"),
        ["circuit"] = (s, c) => s.Circuit = c.Words("the number of a circuit"),
        ["volume"] = (s, c) => s.Volume = c.Quantity("a volume", QuantityKind.Volume),
    };

    protected override IReadOnlySet<string> Repeatable { get; } = new HashSet<string> { "worker", "workers", "work", "clear", "waste", "needs" };

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

            if (c.Try("in"))
            {
                s.Room = c.Name("the name of a room");
                return;
            }

            HeadWord(s, c);
        }
    }

    protected override bool Headless(StationStatement s, Cursor c)
    {
        if (c.IsWord("in") && !c.IsWord("line", 1))
        {
            c.Skip();
            s.Room = c.Name("the name of a room");
            return true;
        }

        if (c.AtNumber && OpeningParser.SizeStandsHere(c))
        {
            s.Size = c.Size("a length along the station", 2, 3);
            return true;
        }

        if (!PlaceParser.Starts(c))
        {
            return false;
        }

        PlaceParser.One(c, s.Place);
        return true;
    }

    private static void HeadWord(StationStatement s, Cursor c)
    {
        if (c.AtNumber)
        {
            s.Volume = c.Quantity("a volume", QuantityKind.Volume);
        }
        else if (s.Keyword.Text is "station" or "kind" && s.Purpose.Count == 0)
        {
            c.Wrong(s.Keyword.Text == "kind" ? "the end of the line" : "`in` and a room", s.Keyword.Text == "kind" ? "details go on indented lines below" : $"write `station {s.Name?.Text} \"Label\" in ROOM`");
        }
        else if (c.Word("what it is for") is { } word)
        {
            s.Purpose.Add(word);
        }
    }

    private static NumberSyntax? Turned(Cursor c)
    {
        var degrees = c.Number("degrees: 90, 180 or 270");
        c.Try("degrees");
        return degrees;
    }
}
