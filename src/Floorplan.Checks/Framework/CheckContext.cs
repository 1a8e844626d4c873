using Floorplan.Model;
using Floorplan.Model.Space;

namespace Floorplan.Checks.Framework;

/// <summary>What a rule may look at.</summary>
public sealed class CheckContext(Plan plan, IFloorSpace space)
{
    public Plan Plan { get; } = plan;

    public IFloorSpace Space { get; } = space;
}
