using Floorplan.Model.Flows;
using Floorplan.Model.Services;
using Floorplan.Model.Shapes;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;

namespace Floorplan.Sizing.Water;

/// <summary>
/// A hose that hands take, or a tap that hands turn: one on which no hose hangs, with no station before it that water is piped to.
/// </summary>
/// <param name="Hung">The hose, or the tap.</param>
/// <param name="Across">On plan from the front of the person who stands nearest, in mm.</param>
/// <param name="Height">Above the floor, in mm; null when not said.</param>
/// <param name="Over">The stations that it hangs over.</param>
public sealed record HandTap(ServicePoint Hung, double Across, double? Height, IReadOnlyList<Station> Over)
{
    /// <summary>A station as near as this to a tap stands before it, in mm; own assumption.</summary>
    private const double Before = 100;

    /// <summary>Those with floor to stand on in their room.</summary>
    public static IReadOnlyList<HandTap> Of(PlanFacts facts) => [.. Find(facts)];

    private static IEnumerable<HandTap> Find(PlanFacts facts)
    {
        var hoses = facts.Plan.Services.OfType<Hose>().Where(s => s.OnId is not null).ToLookup(s => s.OnId!);
        foreach (var water in facts.Plan.Services.OfType<WaterPoint>().Where(s => s.Room is not null))
        {
            var at = water.At.Coordinate;
            var near = new Envelope(at);
            near.ExpandBy(Before);
            var point = Shape.Factory.CreatePoint(at);
            var over = facts.Space.StationsNear(near).Where(s => s.Room.Id == water.Room!.Id && s.Footprint.Distance(point) <= Before)
                .ToList();
            var hose = hoses[water.Id].FirstOrDefault();
            if ((hose is not null || !over.Exists(facts.Uses.TakesWater))
                && facts.Space.StandingAt(new ServiceStop(water, water.Span), water.Room) is { } stand)
            {
                // Arms start at the front of the body, half a standing place ahead of its middle.
                double across = Math.Max(0, stand.Distance(at) - (WorkerSize.Depth.Millimetres / 2));
                yield return new HandTap(hose is null ? water : hose, across, water.Height?.Millimetres, over);
            }
        }
    }
}
