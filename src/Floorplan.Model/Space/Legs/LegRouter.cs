using Floorplan.Model.Flows;
using Floorplan.Model.Openings;
using Floorplan.Model.Space.Free;
using Floorplan.Model.Space.Search;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Model.Space.Legs;

/// <summary>The real route of every leg: walked round things, handed over, or straight for belts and rails.</summary>
internal sealed class LegRouter(Plan plan, Maps maps, StandingPlaces standing)
{
    private readonly LegEnds ends = new(plan, maps, standing);
    private readonly StraightLeg straight = new(plan, maps);
    private readonly BlockedLeg blocked = new(plan, maps);

    public IReadOnlyList<LegRoute> RouteAll()
    {
        var routes = new List<LegRoute>();
        foreach (var flow in plan.Flows)
        {
            var named = flow.Legs.GroupBy(l => l.Chain).ToDictionary(
                g => g.Key,
                g => g.SelectMany(l => new[] { l.From, l.To }).OfType<OpeningStop>().Select(o => o.Opening.Id).ToHashSet());

            // In one chain all is carried alike, so that a way gone again is the same way.
            var known = new Dictionary<(int Chain, string From, string To), LegRoute>();
            foreach (var leg in flow.Legs)
            {
                Steps.Beside(Steps.Leg);
                var key = (leg.Chain, leg.From.Name, leg.To.Name);
                routes.Add(
                    known.TryGetValue(key, out var same) ? same with { Leg = leg } : known[key] = Find(flow, leg, named[leg.Chain]));
            }
        }

        return routes;
    }

    private LegRoute Find(Flow flow, Leg leg, HashSet<string> named)
    {
        var movers = LegMover.Of(flow, leg);
        switch (leg.Carriage.Kind)
        {
            case CarriageKind.Rail or CarriageKind.Conveyor or CarriageKind.Chute or CarriageKind.Pump:
                return new LegRoute(flow, leg, movers[0], straight.Find(leg), null);
            case CarriageKind.Hand when flow.Stream != Stream.People && HandOver.Find(leg, maps) is { } handed:
                return new LegRoute(flow, leg, movers[0], handed, null);
        }

        // The openings that the chain names come first; any other is used only when they do not lead there.
        foreach (Func<Opening, bool> mayPass in new Func<Opening, bool>[] { o => named.Contains(o.Id), MayPass })
        {
            foreach (var mover in movers)
            {
                var map = maps.For(mover, MayPass);
                LegEnd from = ends.Of(leg.From, leg.To, map), to = ends.Of(leg.To, leg.From, map);
                if (Walk(map, from, to, mayPass) is { } route)
                {
                    return new LegRoute(flow, leg, mover, WithStops(route, from, to), null);
                }
            }
        }

        var least = maps.For(movers[^1], MayPass);
        string? fault = ends.Of(leg.From, leg.To, least).Fault ?? ends.Of(leg.To, leg.From, least).Fault;
        return new LegRoute(flow, leg, movers[^1], null, blocked.Sentence(leg, movers[^1], fault, Other));

        bool MayPass(Opening o) => o.IsWalkable || named.Contains(o.Id);

        Route? Other(Mover other)
        {
            var its = maps.For(other, MayPass);
            return Walk(its, ends.Of(leg.From, leg.To, its), ends.Of(leg.To, leg.From, its), MayPass);
        }
    }

    private static Route? Walk(FloorMap map, LegEnd from, LegEnd to, Func<Opening, bool> mayPass)
    {
        // A search starts from many places at once, but ends at one point.
        bool turned = to.Places.Count > from.Places.Count;
        var (starts, goals) = turned ? (to.Places, from.Places) : (from.Places, to.Places);
        Route? best = null;
        foreach (var goal in goals.GroupBy(g => (g.Point.X, g.Point.Y)))
        {
            if (Routes.Between(map, starts, [.. goal], mayPass) is { } route && (best is null || route.LengthMm < best.LengthMm))
            {
                best = route;
            }
        }

        return best is not null && turned ? Routes.Reverse(best) : best;
    }

    /// <summary>Adds the openings that the leg starts and ends at, and the hands' way into a hatch.</summary>
    private static Route WithStops(Route route, LegEnd from, LegEnd to)
    {
        var points = route.Path.Coordinates.ToList();
        var openings = route.Openings.ToList();
        if (from.Hands is { } first && !first.Equals2D(points[0]))
        {
            points.Insert(0, first);
        }

        if (to.Hands is { } last && !last.Equals2D(points[^1]))
        {
            points.Add(last);
        }

        // A way that starts or ends in the middle of a door touches both rooms there, but goes through one of them only.
        var rooms = route.Rooms.ToList();
        if (from.Opening is { } start)
        {
            if (openings.Count == 0 || openings[0].Id != start.Id)
            {
                openings.Insert(0, start);
            }
            else if (rooms.Count > 1)
            {
                rooms.RemoveAt(0);
            }
        }

        if (to.Opening is { } end)
        {
            if (openings.Count == 0 || openings[^1].Id != end.Id)
            {
                openings.Add(end);
            }
            else if (rooms.Count > 1)
            {
                rooms.RemoveAt(rooms.Count - 1);
            }
        }

        return new Route(Routes.Path(points), rooms, openings);
    }
}
