using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Parsing.Statements;

internal sealed class UseParser : StatementParser<UseStatement>
{
    protected override IReadOnlyDictionary<string, Action<UseStatement, Cursor>> Handlers { get; } = new Dictionary<string, Action<UseStatement, Cursor>>();

    protected override UseStatement Make(WordSyntax keyword) => new() { Keyword = keyword };

    protected override void Head(UseStatement s, Cursor c) => s.Path = c.Words("a shelf of parts such as `parts/fish`, or a file name in quotes");
}
