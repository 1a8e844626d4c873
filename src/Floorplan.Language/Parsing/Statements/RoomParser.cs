using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Parsing.Statements;

internal sealed class RoomParser : StatementParser<RoomStatement>
{
    private static readonly string[] Classes = ["dirty", "clean", "cold", "dry", "staff", "plant", "toilet"];
    private static readonly string[] Surfaces = ["floor", "walls", "ceiling", "base"];

    public override IReadOnlySet<string> NotYetUsed { get; } = new HashSet<string> { "keep" };

    protected override IReadOnlyDictionary<string, Action<RoomStatement, Cursor>> Handlers { get; } = new Dictionary<string, Action<RoomStatement, Cursor>>
    {
        ["from"] = Slice,
        ["area"] = (s, c) => s.Area = c.Size("the room's width from west to east", 2, 2),
        ["keep"] = (s, c) => s.Keep = c.Quantity("a temperature", QuantityKind.Temperature),
        ["light"] = (s, c) => s.Light = c.Quantity("a light level", QuantityKind.Illuminance),
        ["washed"] = (s, c) => s.WashedDown = c.Expect("down") ? true : null,
        ["kept"] = (s, c) => s.WashedDown = c.Expect("dry") ? false : null,
        ["place"] = (s, c) => PlaceParser.List(c, s.Place),
        ["finish"] = Finish,
        ["finishes"] = Finish,
    };

    protected override IReadOnlySet<string> Repeatable { get; } = new HashSet<string> { "finish" };

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
        if (c.Try("from"))
        {
            Slice(s, c);
        }
        else if (c.Try("area"))
        {
            s.Area = c.Size("the room's width from west to east", 2, 2);
            if (s.Area is not null && !c.AtPhraseEnd && PlaceParser.Starts(c) && PlaceParser.Term(c) is { } term)
            {
                s.Place.Add(term);
            }
        }
    }

    protected override bool Headless(RoomStatement s, Cursor c)
    {
        if (c.IsWord("in") && !c.IsWord("line", 1))
        {
            c.Skip();
            s.In = c.Name("the name of a room");
            return true;
        }

        if (!PlaceParser.Starts(c))
        {
            return false;
        }

        PlaceParser.One(c, s.Place);
        return true;
    }

    private static void Slice(RoomStatement s, Cursor c)
    {
        s.From = Bound(c);
        s.To = s.From is not null && c.Expect("to") ? Bound(c) : null;
    }

    private static SliceBoundSyntax? Bound(Cursor c)
    {
        var start = c.Here;
        if (c.AtSide())
        {
            return new SliceBoundSyntax(c.Side("a side"), null, start);
        }

        return c.Length("a side or a distance") is { } distance ? new SliceBoundSyntax(null, distance, start.To(c.Before)) : null;
    }

    private static void Finish(RoomStatement s, Cursor c)
    {
        do
        {
            if (c.Word("a surface", Surfaces) is not { } surface || c.Words("a finish") is not { } text)
            {
                return;
            }

            s.Finishes.Add(new FinishSyntax(surface, text));
        }
        while (c.NextInList(n => Surfaces.Any(w => n.IsWord(w))));
    }
}
