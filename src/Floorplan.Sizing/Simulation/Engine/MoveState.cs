using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Engine;

/// <summary>What is on the way between two steps.</summary>
internal sealed class MoveState(LineMove move)
{
    public LineMove Move => move;

    public bool HasCarrier => move.Load > 1;

    /// <summary>Trolleys that stand at the start.</summary>
    public int Standing { get; set; } = move.Carriers;

    /// <summary>Items on the one that is being loaded.</summary>
    public int Loaded { get; set; }

    public int Trips { get; set; }

    public int Items { get; set; }

    /// <summary>Items on their way.</summary>
    public int Under { get; set; }
}
