using Floorplan.Language.Details;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Syntax.Statements;

/// <summary>Walls between rooms.</summary>
public sealed class PartitionsStatement : Statement
{
    public LengthSyntax? Thickness => Value(PartitionsDetails.Thickness);

    public LengthSyntax? Height => Value(PartitionsDetails.Height);

    public TextSyntax? Build => Value(PartitionsDetails.Build);
}
