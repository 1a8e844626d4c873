using Floorplan.Model.Flows;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Model.Space.Legs;

/// <summary>Who or what moves over the floor on a leg.</summary>
internal static class LegMover
{
    /// <summary>Width of a trolley when the plan does not say: 600 mm, common practice, no source.</summary>
    private const double TrolleyWidth = 600;

    public static Mover Of(Flow flow, Leg leg) => leg.Carriage.Kind switch
    {
        CarriageKind.Trolley => Mover.Trolley(leg.Carriage.Width?.Millimetres ?? TrolleyWidth),
        CarriageKind.Hand when flow.Stream != Stream.People => Mover.Carrying,
        _ => Mover.Person,
    };
}
