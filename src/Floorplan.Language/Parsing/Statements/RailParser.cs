using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Tokens;

namespace Floorplan.Language.Parsing.Statements;

internal sealed class RailParser : StatementParser<RailStatement>
{
    public override IReadOnlySet<string> NotYetUsed { get; } = new HashSet<string> { "pitch" };

    protected override IReadOnlyDictionary<string, Action<RailStatement, Cursor>> Handlers { get; } = new Dictionary<string, Action<RailStatement, Cursor>>
    {
        ["path"] = Path,
        ["height"] = (s, c) => s.Height = c.Length("the height of the hooks"),
        ["pitch"] = (s, c) => s.Pitch = c.Length("the spacing of the hooks"),
        ["through"] = Through,
    };

    protected override RailStatement Make(WordSyntax keyword) => new() { Keyword = keyword };

    protected override void Head(RailStatement s, Cursor c)
    {
        s.Name = c.Name("the rail's name");
        s.Label = c.TryText();
        if (c.Try("in"))
        {
            s.Room = c.Name("the name of a room");
        }
    }

    private static void Path(RailStatement s, Cursor c)
    {
        do
        {
            if (c.Length("how far east a point is", mayBeNegative: true) is not { } x || c.Length("how far north a point is", mayBeNegative: true) is not { } y)
            {
                return;
            }

            s.Path.Add(new CornerSyntax(x, y));
        }
        while (c.NextInList(n => n.AtNumber));
    }

    private static void Through(RailStatement s, Cursor c)
    {
        do
        {
            if (c.Name("the name of an opening") is { } name)
            {
                s.Through.Add(name);
            }
        }
        while (c.NextInList(n => n.Kind == TokenKind.Word && !n.IsWord("height") && !n.IsWord("pitch") && !n.IsWord("path")));
    }
}
