using Floorplan.Language.Text;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power.Loads;

/// <summary>One thing that draws power.</summary>
/// <param name="Id">Of the station, heater or outlet; for lamps of the room.</param>
/// <param name="Name">For people: <c>Drum plucker</c>, <c>lamps of Holding</c>.</param>
/// <param name="Volts">Between lines of three-phase power; above 0.</param>
/// <param name="Phases">1 or 3.</param>
/// <param name="Current">In each line, in A.</param>
/// <param name="Draws">In VA.</param>
/// <param name="Span">Where the plan says it.</param>
public sealed record PowerLoad(
    string Id, string Name, PowerLoadKind Kind, double Volts, int Phases, Figure Current, Figure Draws, SourceSpan Span)
{
    /// <summary>The plan says the voltage of the thing itself.</summary>
    public bool SaysVolts { get; init; }

    public Room? Room { get; init; }

    public required PlanPoint At { get; init; }

    /// <summary>Where the cable ends, above the floor, in mm.</summary>
    public required double Height { get; init; }

    /// <summary>As written; empty when not said.</summary>
    public string Circuit { get; init; } = "";
}

public enum PowerLoadKind
{
    /// <summary>A station whose power is said as electric input.</summary>
    Machine,

    /// <summary>A station whose power is said in horsepower.</summary>
    Motor,

    TankHeater,
    InstantHeater,

    /// <summary>An outlet that no machine hangs on.</summary>
    Outlet,

    Light,
}
