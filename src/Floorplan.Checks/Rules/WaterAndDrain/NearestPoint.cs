using Floorplan.Model;
using Floorplan.Model.Services;
using Floorplan.Model.Shapes;
using Floorplan.Model.Stations;

namespace Floorplan.Checks.Rules.WaterAndDrain;

/// <summary>The service point of a kind that is nearest to a station, in its own room.</summary>
internal static class NearestPoint
{
    /// <summary>Straight distance on plan from the station's edge in mm; null when the room has no such point.</summary>
    public static (ServicePoint Point, double Mm)? To(Plan plan, Station station, Func<ServicePoint, bool> serves)
    {
        (ServicePoint Point, double Mm)? nearest = null;
        foreach (var point in plan.Services.Where(p => p.Room?.Id == station.Room.Id && serves(p)))
        {
            double far = station.Footprint.Distance(Shape.Factory.CreatePoint(point.At.Coordinate));
            if (nearest is null || far < nearest.Value.Mm)
            {
                nearest = (point, far);
            }
        }

        return nearest;
    }
}
