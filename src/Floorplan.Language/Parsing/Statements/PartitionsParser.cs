using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Parsing.Statements;

internal sealed class PartitionsParser : StatementParser<PartitionsStatement>
{
    public override IReadOnlySet<string> NotYetUsed { get; } = new HashSet<string> { "build" };

    protected override IReadOnlyDictionary<string, Action<PartitionsStatement, Cursor>> Handlers { get; } = new Dictionary<string, Action<PartitionsStatement, Cursor>>
    {
        ["thickness"] = (s, c) => s.Thickness = c.Length("a thickness"),
        ["height"] = (s, c) => s.Height = c.Length("a height"),
        ["build"] = (s, c) => s.Build = c.Words("what they are built of"),
    };

    protected override PartitionsStatement Make(WordSyntax keyword) => new() { Keyword = keyword };

    protected override void Head(PartitionsStatement s, Cursor c)
    {
        if (c.Try("thickness"))
        {
            s.Thickness = c.Length("a thickness");
        }
    }
}
