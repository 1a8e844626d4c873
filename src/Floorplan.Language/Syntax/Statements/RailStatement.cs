using Floorplan.Language.Details;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Syntax.Statements;

/// <summary>An overhead rail. Its points count from the room's south-west corner, or from the plan's when no room is named.</summary>
public sealed class RailStatement : Statement
{
    public NameSyntax? Room => Value(RailDetails.Room);

    public IReadOnlyList<CornerSyntax> Path => Value(RailDetails.Path) ?? [];

    public LengthSyntax? Height => Value(RailDetails.Height);

    public LengthSyntax? Pitch => Value(RailDetails.Pitch);

    public IReadOnlyList<NameSyntax> Through => Value(RailDetails.Through) ?? [];
}
