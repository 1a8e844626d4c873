using Floorplan.Language.Syntax;
using Floorplan.Language.Words.Terms;
using Floorplan.Model;
using Floorplan.Model.Services;
using Floorplan.Model.Shapes;
using Floorplan.Model.Space;
using NetTopologySuite.Geometries;

namespace Floorplan.Checks.Measuring;

/// <summary>How far a hole for a pipe, cable or fan reaches beyond the floor, roof or wall that it is cut in.</summary>
internal static class HoleBeyond
{
    /// <summary>In mm; 0 when all of it lies within.</summary>
    public static double Of(Plan plan, Hole hole)
    {
        if (hole.Size is not { } size)
        {
            return 0;
        }

        double along = size.Millimetres / 2;
        double across = (hole.SizeAcross ?? size).Millimetres / 2;
        if (hole.Wall is { } wall)
        {
            double up = hole.Height is { } height
                ? Math.Max(across - height.Millimetres, height.Millimetres + across - plan.Shell.CeilingHeight.Millimetres)
                : 0;
            return Math.Max(0, Math.Max(up, Sideways(plan, wall, hole.At.Coordinate, along)));
        }

        var at = hole.At.Coordinate;
        var outline = Shape.Factory.ToGeometry(new Envelope(at.X - along, at.X + along, at.Y - across, at.Y + across));
        var whole = hole.Through == HoleThrough.Roof ? plan.Shell.Outside : plan.Shell.Finished;
        return outline.Coordinates.Max(c => whole.Distance(Shape.Factory.CreatePoint(c)));
    }

    /// <summary>Along the wall, a little inside its face, so that a corner of the shell ends it.</summary>
    private static double Sideways(Plan plan, Side wall, Coordinate at, double half)
    {
        double inwards = wall is Side.North or Side.East ? -Touch.ToleranceMm : Touch.ToleranceMm;
        var line = wall.RunsEastWest()
            ? Shape.Factory.CreateLineString([new(at.X - half, at.Y + inwards), new(at.X + half, at.Y + inwards)])
            : Shape.Factory.CreateLineString([new(at.X + inwards, at.Y - half), new(at.X + inwards, at.Y + half)]);
        return line.Length - Overlays.Stretches(line, plan.Shell.Outside).Length;
    }
}
