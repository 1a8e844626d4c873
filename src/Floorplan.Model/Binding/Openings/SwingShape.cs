using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Binding.Openings;

/// <summary>Draws the movement of leaves on plan: the open leaf, and the floor that it sweeps.</summary>
internal static class SwingShape
{
    /// <summary>Straight pieces of a quarter circle; the outline then lies within 0.5 mm of the true one for a leaf of 900 mm.</summary>
    private const int Pieces = 16;

    /// <param name="wall">The stretch that the hole is in.</param>
    /// <param name="towards">The side that the leaf moves to, or lies on when it slides.</param>
    /// <param name="hingeLow">The hinge is at the west or south end; a sliding leaf goes that way.</param>
    public static Swing Of(SwingKind kind, WallStretch wall, Length from, Length to, Side towards, Room? into, bool hingeLow)
    {
        // Leaves hang on the face that they open over.
        var face = towards == wall.Side ? wall.Far : wall.Near;
        var low = wall.Point(from, face);
        var high = wall.Point(to, face);
        var hinge = hingeLow ? low : high;
        var leaf = to - from;
        return kind switch
        {
            SwingKind.Double => new Swing(
                kind, into, low,
                Shape.Factory.CreateMultiPolygon([Quarter(low, high, leaf / 2, towards), Quarter(high, low, leaf / 2, towards)]),
                [Line(low, Moved(low, towards, leaf / 2)), Line(high, Moved(high, towards, leaf / 2))]),
            SwingKind.Sliding => new Swing(
                kind, into, hinge, Shape.Factory.CreatePolygon(),
                [hingeLow ? Line(wall.Point(from - leaf, face), low) : Line(high, wall.Point(to + leaf, face))]),
            SwingKind.Strip or SwingKind.RollUp => new Swing(kind, into, hinge, Shape.Factory.CreatePolygon(), []),
            _ => new Swing(
                kind, into, hinge,
                Quarter(hinge, hingeLow ? high : low, leaf, towards),
                [Line(hinge, Moved(hinge, towards, leaf))]),
        };
    }

    private static Polygon Quarter(PlanPoint hinge, PlanPoint closedEnd, Length leaf, Side towards)
    {
        var centre = hinge.Coordinate;
        double radius = leaf.Millimetres;
        double closed = Math.Atan2(closedEnd.Coordinate.Y - centre.Y, closedEnd.Coordinate.X - centre.X);
        var openEnd = Moved(hinge, towards, leaf).Coordinate;
        double turn = Math.Atan2(openEnd.Y - centre.Y, openEnd.X - centre.X) - closed;
        turn = turn > Math.PI ? turn - (2 * Math.PI) : turn < -Math.PI ? turn + (2 * Math.PI) : turn;
        var points = new List<Coordinate> { centre };
        for (int i = 0; i <= Pieces; i++)
        {
            double angle = closed + (turn * i / Pieces);
            points.Add(new Coordinate(centre.X + (radius * Math.Cos(angle)), centre.Y + (radius * Math.Sin(angle))));
        }

        points.Add(centre.Copy());
        return Shape.Factory.CreatePolygon([.. points]);
    }

    private static PlanPoint Moved(PlanPoint point, Side towards, Length by) => towards switch
    {
        Side.North => point with { Y = point.Y + by },
        Side.South => point with { Y = point.Y - by },
        Side.East => point with { X = point.X + by },
        _ => point with { X = point.X - by },
    };

    private static LineString Line(PlanPoint a, PlanPoint b) => Shape.Factory.CreateLineString([a.Coordinate, b.Coordinate]);
}
