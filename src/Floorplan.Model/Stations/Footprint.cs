using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model.Shapes;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Stations;

/// <summary>The floor that a station, its workers and its clear spaces take.</summary>
internal static class Footprint
{
    /// <summary>Corners of a round footprint; a tank of 1 m is then true to 1.3 mm.</summary>
    private const int RoundCorners = 48;

    public static Polygon Round(Box bounds)
    {
        var centre = bounds.Centre.Coordinate;
        double radius = bounds.Width.Millimetres / 2;
        var points = new Coordinate[RoundCorners + 1];
        for (int i = 0; i < RoundCorners; i++)
        {
            double angle = 2 * Math.PI * i / RoundCorners;
            points[i] = new Coordinate(centre.X + (radius * Math.Cos(angle)), centre.Y + (radius * Math.Sin(angle)));
        }

        points[^1] = points[0].Copy();
        return Shape.Factory.CreatePolygon(points);
    }

    /// <summary>The strip along one side of a station, as long as the side.</summary>
    public static Box Beside(Box bounds, Side side, Length depth) => side switch
    {
        Side.North => new Box(bounds.West, bounds.North, bounds.East, bounds.North + depth),
        Side.South => new Box(bounds.West, bounds.South - depth, bounds.East, bounds.South),
        Side.East => new Box(bounds.East, bounds.South, bounds.East + depth, bounds.North),
        _ => new Box(bounds.West - depth, bounds.South, bounds.West, bounds.North),
    };

    /// <summary>One worker's standing place; <paramref name="along"/> is the middle of it along the side.</summary>
    public static Box Standing(Box bounds, Side side, Length along)
    {
        var strip = Beside(bounds, side, WorkerSize.Depth);
        var from = along - (WorkerSize.Width / 2);
        return side.RunsEastWest()
            ? strip with { West = from, East = from + WorkerSize.Width }
            : strip with { South = from, North = from + WorkerSize.Width };
    }
}
