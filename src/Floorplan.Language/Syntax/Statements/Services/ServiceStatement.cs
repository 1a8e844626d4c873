using Floorplan.Language.Details.Services;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Syntax.Statements.Services;

/// <summary>A point of a service in a room: what all of them have. What one kind has is in its own statement.</summary>
public abstract class ServiceStatement : Statement
{
    public NameSyntax? Room => Value(ServiceDetails.Room);

    public SideSyntax? Wall => Value(ServiceDetails.Wall);

    public IReadOnlyList<PlaceTerm> Place => Values(ServiceDetails.Place);

    public LengthSyntax? Height => Value(ServiceDetails.Height);
}
