using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Syntax.Statements;

/// <summary>An overhead rail. Its points count from the room's south-west corner, or from the plan's when no room is named.</summary>
public sealed class RailStatement : Statement
{
    public NameSyntax? Room { get; internal set; }

    public List<CornerSyntax> Path { get; } = [];

    public LengthSyntax? Height { get; internal set; }

    public LengthSyntax? Pitch { get; internal set; }

    public List<NameSyntax> Through { get; } = [];
}
