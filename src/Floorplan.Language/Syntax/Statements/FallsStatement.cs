using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Syntax.Statements;

/// <summary><c>falls filleting 2 % to fd1</c>. The room is the name.</summary>
public sealed class FallsStatement : Statement
{
    public QuantitySyntax? Slope { get; internal set; }

    public NameSyntax? To { get; internal set; }
}
