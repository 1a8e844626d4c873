using Floorplan.Sizing.Power;
using Floorplan.Sizing.Uses;

namespace Floorplan.Sizing;

/// <content>What things need, and what of it comes from outside.</content>
public sealed partial class PlanFacts
{
    private ServiceUses? uses;
    private IReadOnlyList<Connection>? connections;
    private PowerLoads? power;
    private IReadOnlyList<WorkingSpace>? workingSpaces;

    public ServiceUses Uses => Once(ref uses, ServiceUses.Of);

    public IReadOnlyList<Connection> Connections => Once(ref connections, Connection.Of);

    public PowerLoads Power => Once(ref power, PowerLoads.Of);

    /// <summary>Before each panel on a wall.</summary>
    public IReadOnlyList<WorkingSpace> WorkingSpaces => Once(ref workingSpaces, WorkingSpace.Of);
}
