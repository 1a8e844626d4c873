using Floorplan.Model.Flows;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Model.Space.Legs;

/// <summary>Who or what moves over the floor on a leg.</summary>
public static class LegMover
{
    /// <summary>Width of a trolley when the plan does not say: 600 mm, common practice, no source.</summary>
    public const double TrolleyWidth = 600;

    /// <summary>The movers to try, widest first: somebody who carries turns sideways where arms full do not pass.</summary>
    public static IReadOnlyList<Mover> Of(Flow flow, Leg leg) => leg.Carriage.Kind switch
    {
        CarriageKind.Trolley => [Mover.Trolley(leg.Carriage.Width?.Millimetres ?? TrolleyWidth)],
        CarriageKind.Hand when flow.Stream != Stream.People => [Mover.Carrying, Mover.Person],
        _ => [Mover.Person],
    };
}
