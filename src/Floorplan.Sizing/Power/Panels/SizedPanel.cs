using Floorplan.Model.Services;
using Floorplan.Sizing.Power.Circuits;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power.Panels;

/// <summary>One panel with the circuits that it feeds and what each of its lines carries.</summary>
/// <param name="Ways">In the order in which they were shared out.</param>
/// <param name="Demand">VA of what is on at once.</param>
/// <param name="Current">On its most loaded line, in A.</param>
/// <param name="Rating">As the plan says it, in A; null when not said.</param>
/// <param name="Uneven">How far the most loaded line is over the mean of all, as a share; 0 on one line.</param>
public sealed record SizedPanel(
    Panel Panel, PanelSystem System, IReadOnlyList<PanelWay> Ways, Figure Demand, Figure Current, Figure? Rating, Figure Uneven);

/// <summary>One circuit in a panel.</summary>
/// <param name="OnLines">VA on each line; 0 where it does not hang on it.</param>
public sealed record PanelWay(SizedCircuit Circuit, IReadOnlyList<double> OnLines);
