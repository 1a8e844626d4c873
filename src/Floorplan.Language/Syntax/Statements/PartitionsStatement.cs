using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Syntax.Statements;

/// <summary>Walls between rooms.</summary>
public sealed class PartitionsStatement : Statement
{
    public LengthSyntax? Thickness { get; internal set; }

    public LengthSyntax? Height { get; internal set; }

    public TextSyntax? Build { get; internal set; }
}
