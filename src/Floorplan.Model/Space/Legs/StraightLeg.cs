using Floorplan.Model.Flows;
using Floorplan.Model.Space.Search;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;
using NetTopologySuite.LinearReferencing;
using NetTopologySuite.Operation.Distance;

namespace Floorplan.Model.Space.Legs;

/// <summary>
/// Legs that do not use the floor: conveyors, chutes, pumps and rails run straight from thing to thing, rails along their path.
/// </summary>
internal sealed class StraightLeg(Plan plan, Maps maps)
{
    /// <summary>
    /// A rail serves what stands within this distance of it, in mm. Own assumption: half a rail bay and a worker's reach.
    /// </summary>
    private const double RailServes = 1500;

    public Route Find(Leg leg)
    {
        Geometry from = ShapeOf(leg.From, leg.To), to = ShapeOf(leg.To, leg.From);
        var path = leg.Carriage.Kind == CarriageKind.Rail && AlongRail(from, to) is { } rail ? rail : Line(from, to);
        return RouteTrace.Of(path, plan, maps);
    }

    private LineString? AlongRail(Geometry from, Geometry to)
    {
        OverheadRail? best = null;
        double nearest = double.PositiveInfinity;
        foreach (var rail in plan.Rails.Where(r => !r.Path.IsEmpty))
        {
            double a = rail.Path.Distance(from), b = rail.Path.Distance(to);
            if (Math.Max(a, b) <= RailServes && a + b < nearest)
            {
                (best, nearest) = (rail, a + b);
            }
        }

        if (best is null)
        {
            return null;
        }

        var along = new LengthIndexedLine(best.Path);
        Coordinate start = from.Centroid.Coordinate, end = to.Centroid.Coordinate;
        var part = along.ExtractLine(along.Project(start), along.Project(end));
        return Routes.Path(Distinct([start, .. part.Coordinates, end]));
    }

    private static LineString Line(Geometry from, Geometry to)
    {
        var ends = DistanceOp.NearestPoints(from, to);
        return ends[0].Equals2D(ends[1])
            ? Routes.Path(Distinct([from.Centroid.Coordinate, to.Centroid.Coordinate]))
            : Routes.Path(ends);
    }

    private static List<Coordinate> Distinct(List<Coordinate> points)
    {
        var kept = new List<Coordinate>();
        foreach (var p in points)
        {
            if (kept.Count == 0 || !p.Equals2D(kept[^1]))
            {
                kept.Add(p);
            }
        }

        return kept;
    }

    private Geometry ShapeOf(Stop stop, Stop other)
    {
        var factory = plan.Shell.Outside.Factory;
        return stop switch
        {
            StationStop s when !s.Station.Footprint.IsEmpty => s.Station.Footprint,
            OutsideStop => factory.CreatePoint(JustOutside(other)),
            _ => factory.CreatePoint(LegEnds.Where(stop) ?? new Coordinate(0, 0)),
        };
    }

    /// <summary>Before the opening that the leg names, or the shell opening that is nearest to the other stop.</summary>
    private Coordinate JustOutside(Stop other)
    {
        const double step = 300;
        var at = LegEnds.Where(other) ?? plan.Shell.Outside.Centroid.Coordinate;
        var passage = maps.Passages.Where(p => p.LeadsOut).MinBy(p => p.Middle.Distance(at));
        if (passage is not null)
        {
            return passage.Before(null, step);
        }

        var wall = plan.Shell.Outside.ExteriorRing;
        return wall.IsEmpty ? at : DistanceOp.NearestPoints(wall, wall.Factory.CreatePoint(at))[0];
    }
}
