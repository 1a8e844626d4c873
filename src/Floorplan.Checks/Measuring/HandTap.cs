using Floorplan.Checks.Framework;
using Floorplan.Model.Flows;
using Floorplan.Model.Services;
using Floorplan.Model.Shapes;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;

namespace Floorplan.Checks.Measuring;

/// <summary>A hose that hands take, or a tap that hands turn: one on which no hose hangs, with no station before it that water is piped to.</summary>
/// <param name="Hung">The hose, or the tap.</param>
/// <param name="Across">On plan from the front of who stands nearest, in mm.</param>
/// <param name="Height">Above the floor, in mm; null when not said.</param>
/// <param name="Over">The stations that it hangs over.</param>
internal sealed record HandTap(ServicePoint Hung, double Across, double? Height, IReadOnlyList<Station> Over)
{
    /// <summary>A station as near as this to a tap stands before it, in mm; own assumption.</summary>
    private const double Before = 100;

    /// <summary>Those with floor to stand on in their room.</summary>
    public static IEnumerable<HandTap> Of(CheckContext context)
    {
        var hoses = context.Plan.Services.OfType<Hose>().Where(h => h.OnId is not null).ToLookup(s => s.OnId!);
        foreach (var water in context.Plan.Services.OfType<WaterPoint>().Where(w => w.Room is not null))
        {
            var at = water.At.Coordinate;
            var near = new Envelope(at);
            near.ExpandBy(Before);
            var over = context.Space.StationsNear(near).Where(s => s.Room.Id == water.Room!.Id && s.Footprint.Distance(Shape.Factory.CreatePoint(at)) <= Before).ToList();
            var hose = hoses[water.Id].FirstOrDefault();
            if ((hose is not null || !over.Exists(s => s.IsWet)) && context.Space.StandingAt(new ServiceStop(water, water.Span), water.Room) is { } stand)
            {
                // Arms start at the front of the body, half a standing place ahead of its middle.
                yield return new HandTap((ServicePoint?)hose ?? water, Math.Max(0, stand.Distance(at) - (WorkerSize.Depth.Millimetres / 2)), water.Height?.Millimetres, over);
            }
        }
    }
}
