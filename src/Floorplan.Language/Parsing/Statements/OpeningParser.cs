using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Parsing.Statements;

/// <summary>Doors, hatches, windows, openings, chutes and vents.</summary>
internal sealed class OpeningParser : StatementParser<OpeningStatement>
{
    protected override IReadOnlyDictionary<string, Action<OpeningStatement, Cursor>> Handlers { get; } = new Dictionary<string, Action<OpeningStatement, Cursor>>
    {
        ["size"] = (s, c) => s.Size = c.Size("a clear width", 2, 2),
        ["place"] = (s, c) => PlaceParser.List(c, s.Place),
        ["sill"] = (s, c) => s.Sill = c.Length("a height above the floor"),
        ["swings"] = Swings,
        ["double"] = (s, c) => s.Leaf = Leaf("double", c),
        ["slides"] = (s, c) => s.Leaf = Leaf("slides", c),
        ["strip"] = (s, c) => s.Leaf = c.Expect("curtain") ? Leaf("strip", c) : null,
        ["rolls"] = (s, c) => s.Leaf = c.Expect("up") ? Leaf("rolls", c) : null,
        ["hinge"] = (s, c) => s.Hinge = c.Side("the end that the hinge is at"),
        ["closes"] = (s, c) => s.ClosesItself = c.Expect("itself"),
        ["opens"] = (s, c) => s.OpensFromInside = c.Expect("from") && c.Expect("inside"),
        ["steps"] = (s, c) => s.Steps = c.Number("how many rises lead up from the ground"),
        ["ramp"] = (s, _) => s.Ramp = true,
        ["guard"] = (s, _) => s.Guard = true,
        ["frame"] = Frame,
        ["radius"] = (s, c) => s.Radius = c.Length("the radius of the corners of the hole"),
    };

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

    protected override bool Headless(OpeningStatement s, Cursor c)
    {
        if (c.AtSide() && c.IsWord("wall", 1))
        {
            s.Wall = c.Side("a wall");
            c.Skip();
            return true;
        }

        if (c.AtNumber && SizeStandsHere(c))
        {
            s.Size = c.Size("a clear width", 2, 2);
            return true;
        }

        if (!PlaceParser.Starts(c))
        {
            return false;
        }

        PlaceParser.One(c, s.Place);
        return true;
    }

    /// <summary>A phrase that starts with a number is a size when an <c>x</c> comes before any <c>from</c>.</summary>
    internal static bool SizeStandsHere(Cursor c)
    {
        for (int ahead = 0; c.KindAt(ahead) is { } kind && kind != Tokens.TokenKind.Comma; ahead++)
        {
            if (c.IsWord("from", ahead))
            {
                return false;
            }

            if (c.IsWord("x", ahead) || c.TextAt(ahead) == "×")
            {
                return true;
            }
        }

        return false;
    }

    private static void Swings(OpeningStatement s, Cursor c)
    {
        s.Leaf ??= new WordSyntax("swings", c.Before);
        c.Try("into");
        s.SwingsTo = c.Name("`out`, `in` or a room");
    }

    /// <summary><c>frame tube 50 x 50 x 3</c>, <c>frame angle 50 x 50 x 5</c>, <c>frame none</c>, or words for the drawing.</summary>
    private static void Frame(OpeningStatement s, Cursor c)
    {
        if (c.IsWord("none") || c.IsWord("tube") || c.IsWord("angle"))
        {
            s.FrameForm = c.Word("`tube`, `angle` or `none`");
            s.FrameSize = s.FrameForm?.Text == "none" ? null : c.Size("the width of the section", 3, 3);
            return;
        }

        s.Frame = c.Words("`tube` or `angle` and its section, `none`, or what the frame is made of");
    }

    private static WordSyntax Leaf(string word, Cursor c) => new(word, c.Before);
}
