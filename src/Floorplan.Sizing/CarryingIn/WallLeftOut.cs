using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using NetTopologySuite.Geometries;

namespace Floorplan.Sizing.CarryingIn;

/// <summary>A plan while one of its walls is not yet built.</summary>
internal static class WallLeftOut
{
    /// <summary>The wall of an opening is a hole from end to end of what its two sides share, and up to the sky.</summary>
    public static Plan Of(Plan plan, Opening opening)
    {
        bool alongX = opening.Wall is Side.North or Side.South;
        var hole = opening.Reveal.EnvelopeInternal;
        double low = double.NegativeInfinity, high = double.PositiveInfinity;
        foreach (var floor in new[] { opening.RoomA, opening.RoomB }.OfType<Room>().Select(r => r.Floor.EnvelopeInternal))
        {
            low = Math.Max(low, alongX ? floor.MinX : floor.MinY);
            high = Math.Min(high, alongX ? floor.MaxX : floor.MaxY);
        }

        if (!(high > low))
        {
            return plan;
        }

        var wall = alongX ? new Envelope(low, high, hole.MinY, hole.MaxY) : new Envelope(hole.MinX, hole.MaxX, low, high);
        wall.ExpandToInclude(hole);
        if (Shape.Factory.ToGeometry(wall) is not Polygon reveal)
        {
            return plan;
        }

        var whole = opening with
        {
            Kind = OpeningKind.Opening,
            Reveal = reveal,
            Sill = Length.Zero,
            Width = Length.FromMillimetres(Math.Round(alongX ? wall.Width : wall.Height)),
            Height = Length.FromMillimetres(1_000_000),
        };
        return plan with { Openings = [.. plan.Openings.Select(o => ReferenceEquals(o, opening) ? whole : o)] };
    }
}
