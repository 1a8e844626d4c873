using Floorplan.Model.Rooms;
using Floorplan.Sizing.Sizes;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Cold.Loads;

/// <summary>What the cooling unit of one cold room has to carry away.</summary>
/// <param name="Lines">Load by load; the average of the summer day.</param>
/// <param name="Load">All of them together.</param>
/// <param name="Duty">Of the unit while it runs, with what is added for safety.</param>
/// <param name="Figures">In the order in which they are worked out.</param>
/// <param name="Missing">What the plan does not say.</param>
public sealed record ColdRoomLoad(
    Room Room, IReadOnlyList<ColdLoad> Lines, Figure Load, Figure Duty, IReadOnlyList<Figure> Figures, IReadOnlyList<NotSaid> Missing);

/// <summary>One load of a cold room.</summary>
/// <param name="Amount">What it is of, in a few words: <c>12.3 m², 0.46 W/m²K</c>.</param>
/// <param name="Difference">Of temperatures; empty where there is none.</param>
/// <param name="Heat">Average of the day.</param>
public sealed record ColdLoad(string Name, string Amount, string Difference, Figure Heat);
