using Floorplan.Model.Flows;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Lifting;

/// <summary>One load taken up at a place and set down at the next, by two hands.</summary>
/// <param name="From">Null where it comes from outside.</param>
/// <param name="To">Null where it goes outside.</param>
/// <param name="Load">In kg; null when the plan does not say.</param>
/// <param name="Index">
/// The lifting index at its most favourable: load close, no twist, firm grip, one lift now and then. Infinite where the equation allows
/// no such lift; null when the load is not known. Where <paramref name="NotCovered"/> says something it is what the index would be if
/// the equation held.
/// </param>
/// <param name="NotCovered">Why the equation does not hold for this lift, such as <c>cold rooms</c>; null when it does.</param>
/// <param name="Leg">The leg that it starts.</param>
public sealed record HandLift(Flow Flow, Leg Leg, Stop? From, Stop? To, Figure? Load, Figure? Index, string? NotCovered)
{
    /// <summary>The stations that it is lifted out of and onto.</summary>
    public IEnumerable<Station> Stations => new[] { From, To }.OfType<StationStop>().Select(s => s.Station);
}
