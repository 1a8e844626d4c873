using Floorplan.Model.Flows;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Space;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Sizing.Simulation.Plans;

/// <summary>
/// What one load does between two places where it is set down: legs that one pair of hands, one trolley or one chute does without a stop.
/// </summary>
/// <param name="From">A station, a hatch, or outside.</param>
/// <param name="To">The same.</param>
internal sealed record LineWay(Stop From, Stop To, IReadOnlyList<LegRoute> Legs)
{
    /// <summary>The product that the flow is for; empty for all.</summary>
    public string Product => Legs[0].Flow.Product ?? "";

    /// <summary>The items are there from the start.</summary>
    public bool IsStart { get; init; }

    public Carriage Carriage => Legs[0].Leg.Carriage;

    public double Millimetres => Legs.Sum(l => l.Route?.LengthMm ?? 0);

    /// <summary>Where it begins; null outside.</summary>
    public Room? Room => From switch
    {
        StationStop s => s.Station.Room,
        _ => RoomOf(To),
    };

    private static Room? RoomOf(Stop stop) => (stop as StationStop)?.Station.Room;

    /// <summary>The ways of a stream during work.</summary>
    public static IEnumerable<LineWay> During(PlanFacts facts, Stream stream) => facts.Space.LegRoutes
        .Where(l => l.Flow.Stream == stream && l.Leg.Period == Period.During)
        .GroupBy(l => l.Flow, ReferenceEqualityComparer.Instance).SelectMany(Of);

    /// <summary>The ways of one flow: its legs, joined where nothing is set down between them.</summary>
    public static IEnumerable<LineWay> Of(IEnumerable<LegRoute> legs)
    {
        var open = new List<LegRoute>();
        foreach (var leg in legs)
        {
            if (open.Count > 0 && (open[^1].Leg.To.Name != leg.Leg.From.Name || open[^1].Leg.Chain != leg.Leg.Chain))
            {
                open.Clear();
            }

            open.Add(leg);
            if (IsPlace(leg.Leg.To))
            {
                yield return new LineWay(open[0].Leg.From, leg.Leg.To, [.. open]);
                open.Clear();
            }
        }
    }

    /// <summary>Product goes through a door in somebody's hands, and is set down in a hatch.</summary>
    private static bool IsPlace(Stop stop) => stop switch
    {
        StationStop or OutsideStop => true,
        OpeningStop opening => opening.Opening.Kind is OpeningKind.Hatch,
        _ => false,
    };
}
