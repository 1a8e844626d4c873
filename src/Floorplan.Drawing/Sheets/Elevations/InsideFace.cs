using Floorplan.Drawing.Faces;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model;
using Floorplan.Model.Openings;
using Floorplan.Model.Services;
using Floorplan.Model.Shapes;
using Floorplan.Model.Shells;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;

namespace Floorplan.Drawing.Sheets.Elevations;

/// <summary>
/// The finished inside of one outside wall, flat: <c>u</c> to the right as seen from inside, <c>v</c> up from the finished floor, in
/// mm.
/// </summary>
internal sealed record InsideFace
{
    /// <summary>What stands farther from the wall is not part of its elevation. Own choice.</summary>
    private static readonly Length Beside = Length.FromMillimetres(300);

    private static readonly Length JustInside = Length.FromMillimetres(1);

    /// <summary>Thicker than any partition, mm.</summary>
    private const double MostThick = 600;

    private readonly Plan plan;
    private readonly ShellWall wall;
    private readonly Length from;
    private readonly Length to;
    private readonly Length at;

    public InsideFace(Plan plan, ShellWall wall)
    {
        this.plan = plan;
        this.wall = wall;
        var face = new WallFace(plan.Shell, wall, FromOutside: false);
        (from, to, at) = (face.Finished.From, face.Finished.To, face.Finished.At);
        IsMirrored = face.IsMirrored;
        Title = face.Title;
    }

    public string Title { get; }

    public ShellWall Wall => wall;

    /// <summary>The west or south end is at the right.</summary>
    public bool IsMirrored { get; }

    public Length Height => plan.Shell.CeilingHeight;

    public Envelope Extent => new(0, (to - from).Millimetres, 0, Height.Millimetres);

    public Length U(Length along) => IsMirrored ? to - along : along - from;

    public Box Rectangle(Length a, Length b, Length bottom, Length top) =>
        new(Length.Min(U(a), U(b)), bottom, Length.Max(U(a), U(b)), top);

    /// <summary>Openings in this wall, clear sizes.</summary>
    public IEnumerable<Opening> Openings => plan.Openings.Where(o => o.InShell && wall.Holds(o));

    public Box Rectangle(Opening opening)
    {
        var (a, b) = wall.RunsEastWest ? (opening.Start.X, opening.End.X) : (opening.Start.Y, opening.End.Y);
        return Rectangle(a, b, opening.Sill, opening.Sill + opening.Height);
    }

    /// <summary>What stands along the wall, the farthest first, so that what stands nearer is drawn over it.</summary>
    public IEnumerable<Station> Stations
        => plan.Stations.Where(s => Off(s) <= Beside && Overlaps(s)).OrderByDescending(s => s.Hung).ThenBy(s => s.Item);

    public Box Rectangle(Station station) => wall.RunsEastWest
        ? Rectangle(station.Bounds.West, station.Bounds.East, station.Bottom, station.Top)
        : Rectangle(station.Bounds.South, station.Bounds.North, station.Bottom, station.Top);

    public bool Has(ServicePoint point) => point.Wall == wall.Side && IsOn(point.At);

    /// <summary>Points of this wall that cannot be drawn, because the plan does not say how high they are.</summary>
    public IEnumerable<ServicePoint> PointsWithoutHeight =>
        plan.Services.Where(s => Has(s) && s.Height is null && s is not (Hose or Drain));

    /// <summary>Points on this wall whose height the plan says.</summary>
    public IEnumerable<ServicePoint> Points => plan.Services.Where(s => Has(s) && s.Height is not null);

    public (Length U, Length V) Place(ServicePoint point) => (U(wall.RunsEastWest ? point.At.X : point.At.Y), point.Height!.Value);

    /// <summary>Partitions that end at this wall, where they meet it.</summary>
    public IEnumerable<Box> Partitions
    {
        get
        {
            var along = AlongFace();
            foreach (var partition in plan.Partitions)
            {
                var met = Overlays.Stretches(along, partition.Outline);
                for (int i = 0; i < met.NumGeometries; i++)
                {
                    var piece = met.GetGeometryN(i).EnvelopeInternal;
                    var (low, high) = wall.RunsEastWest ? (piece.MinX, piece.MaxX) : (piece.MinY, piece.MaxY);

                    // A partition that lies along the wall is seen from its face, and hides nothing.
                    if (high - low is > 0 and < MostThick)
                    {
                        yield return Rectangle(
                            Length.FromMillimetres(low), Length.FromMillimetres(high), Length.Zero, Length.Min(partition.Height, Height));
                    }
                }
            }
        }
    }

    private LineString AlongFace()
    {
        double across = (at + (wall.Side is Side.South or Side.West ? JustInside : -JustInside)).Millimetres;
        return Shape.Factory.CreateLineString(wall.RunsEastWest
            ? [new Coordinate(from.Millimetres, across), new Coordinate(to.Millimetres, across)]
            : [new Coordinate(across, from.Millimetres), new Coordinate(across, to.Millimetres)]);
    }

    private Length Off(Station station) => Length.Abs(station.Bounds.Of(wall.Side) - at);

    private bool Overlaps(Station station) => wall.RunsEastWest
        ? station.Bounds.West < to && station.Bounds.East > from
        : station.Bounds.South < to && station.Bounds.North > from;

    private bool IsOn(PlanPoint point) => Length.Abs((wall.RunsEastWest ? point.Y : point.X) - at) <= Beside
        && (wall.RunsEastWest ? point.X : point.Y) >= from && (wall.RunsEastWest ? point.X : point.Y) <= to;
}
