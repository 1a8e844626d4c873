using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Syntax.Statements;

/// <summary><c>use parts/fish</c> for the built-in shelf, or <c>use "my-kinds.plan"</c> for a file of the same folder tree.</summary>
public sealed class UseStatement : Statement
{
    public TextSyntax? Path { get; internal set; }
}
