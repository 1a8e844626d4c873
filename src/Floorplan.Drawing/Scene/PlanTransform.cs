using Floorplan.Language.Quantities;
using Floorplan.Model.Shapes;
using NetTopologySuite.Geometries;

namespace Floorplan.Drawing.Scene;

/// <summary>From plan millimetres (y north) to paper millimetres (y down) at 1:<see cref="Denominator"/>.</summary>
/// <param name="Origin">Where the plan's origin falls on paper.</param>
public sealed record PlanTransform(double Denominator, PaperPoint Origin)
{
    /// <summary>Puts the middle of a plan extent on the middle of a box.</summary>
    public static PlanTransform Centred(Envelope extent, PaperBox box, double denominator) => new(
        denominator,
        new PaperPoint(box.Centre.X - (extent.Centre.X / denominator), box.Centre.Y + (extent.Centre.Y / denominator)));

    public double Size(double planMillimetres) => planMillimetres / Denominator;

    public double Size(Length length) => Size(length.Millimetres);

    public PaperPoint ToPaper(double x, double y) => new(Origin.X + (x / Denominator), Origin.Y - (y / Denominator));

    public PaperPoint ToPaper(Coordinate at) => ToPaper(at.X, at.Y);

    public PaperPoint ToPaper(PlanPoint at) => ToPaper(at.X.Millimetres, at.Y.Millimetres);

    public PaperBox ToPaper(Box box)
        => ToPaper(new Envelope(box.West.Millimetres, box.East.Millimetres, box.South.Millimetres, box.North.Millimetres));

    public PaperBox ToPaper(Envelope extent)
    {
        var topLeft = ToPaper(extent.MinX, extent.MaxY);
        return PaperBox.At(topLeft, Size(extent.Width), Size(extent.Height));
    }

    public IReadOnlyList<PaperPoint> ToPaper(LineString line) => [.. line.Coordinates.Select(ToPaper)];

    /// <summary>All rings of all polygons, each without its repeated last point.</summary>
    public IReadOnlyList<IReadOnlyList<PaperPoint>> Rings(Geometry shape)
    {
        var rings = new List<IReadOnlyList<PaperPoint>>();
        for (var i = 0; i < shape.NumGeometries; i++)
        {
            if (shape.GetGeometryN(i) is Polygon { IsEmpty: false } polygon)
            {
                rings.Add([.. polygon.ExteriorRing.Coordinates.SkipLast(1).Select(ToPaper)]);
                rings.AddRange(
                    polygon.InteriorRings.Select(hole => (IReadOnlyList<PaperPoint>)[.. hole.Coordinates.SkipLast(1).Select(ToPaper)]));
            }
        }

        return rings;
    }
}
