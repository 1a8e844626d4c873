namespace Floorplan.Model.Services;

/// <summary>A point on a circuit of the panel.</summary>
public abstract record CircuitPoint : RatedPoint
{
    /// <summary>As written; empty when not said.</summary>
    public string Circuit { get; init; } = "";
}
