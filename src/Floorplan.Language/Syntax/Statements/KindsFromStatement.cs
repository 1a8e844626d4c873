using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Syntax.Statements;

/// <summary>
/// <c>kinds from parts/fish</c> for the built-in shelf, or <c>kinds from "my-kinds.unit"</c> for a file of the same folder tree.
/// </summary>
public sealed class KindsFromStatement : Statement
{
    public TextSyntax? Path { get; internal set; }
}
