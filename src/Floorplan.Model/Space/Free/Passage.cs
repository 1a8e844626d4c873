using Floorplan.Language.Syntax;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space.Free;

/// <summary>
/// The hole of one opening as a rectangle: across the opening from <see cref="Low"/> to <see cref="High"/>, through the wall
/// from <see cref="Near"/> to <see cref="Far"/>. The gate is the line across the middle of the wall where two floors meet.
/// </summary>
internal sealed class Passage
{
    /// <summary>Highest sill or step that people and trolleys cross, in mm; as <see cref="Opening.IsWalkable"/>.</summary>
    public const double HighestStep = 200;

    private readonly bool alongX;

    public Passage(Opening opening, int number)
    {
        Opening = opening;
        Number = number;
        alongX = opening.Wall is Side.North or Side.South;
        var box = opening.Reveal.EnvelopeInternal;
        if (box.IsNull)
        {
            box = new Envelope(opening.Start.Coordinate, opening.End.Coordinate);
        }

        (Low, High) = alongX ? (box.MinX, box.MaxX) : (box.MinY, box.MaxY);
        (Near, Far) = alongX ? (box.MinY, box.MaxY) : (box.MinX, box.MaxX);
        AtNear = LiesAtNear(opening.RoomA ?? opening.RoomB) == opening.RoomA is not null ? opening.RoomA : opening.RoomB;
    }

    public Opening Opening { get; }

    /// <summary>Place in <see cref="Plan.Openings"/>.</summary>
    public int Number { get; }

    public double Low { get; }

    public double High { get; }

    /// <summary>South or west face of the wall.</summary>
    public double Near { get; }

    /// <summary>North or east face of the wall.</summary>
    public double Far { get; }

    /// <summary>The room on the south or west side; null is outside.</summary>
    public Room? AtNear { get; }

    public Room? AtFar => ReferenceEquals(AtNear, Opening.RoomA) ? Opening.RoomB : Opening.RoomA;

    public double Gate => (Near + Far) / 2;

    public double Width => High - Low;

    public Coordinate Middle => Point((Low + High) / 2, Gate);

    /// <summary>Whether it leads to a room (null is outside).</summary>
    public bool LeadsTo(Room? room) => Opening.RoomA?.Id == room?.Id || Opening.RoomB?.Id == room?.Id;

    public bool LeadsOut => Opening.RoomA is null || Opening.RoomB is null;

    public Room? OtherSide(Room? from) => Opening.RoomA?.Id == from?.Id ? Opening.RoomB : Opening.RoomA;

    public bool Lets(Mover mover, bool cargoDoors) =>
        (Opening.IsWalkable || (cargoDoors && Opening.Kind == OpeningKind.CargoDoor && Opening.Sill.Millimetres <= HighestStep))
        && Width >= mover.WidthMm - HalfWidth.Slack
        && Opening.Height.Millimetres >= mover.HeightMm - HalfWidth.Slack;

    /// <summary>A point by its distance along the opening and through the wall.</summary>
    public Coordinate Point(double along, double through) => alongX ? new Coordinate(along, through) : new Coordinate(through, along);

    public double AlongOf(Coordinate c) => alongX ? c.X : c.Y;

    public double ThroughOf(Coordinate c) => alongX ? c.Y : c.X;

    /// <summary>A point before the middle of the opening, a distance off the face on the side of a room (null is outside).</summary>
    public Coordinate Before(Room? room, double distance) =>
        Point((Low + High) / 2, AtNear?.Id == room?.Id ? Near - distance : Far + distance);

    /// <summary>The hole from its gate to the face at one room, a little into the room so that rounding leaves no slit.</summary>
    public Envelope HalfAt(Room? room)
    {
        const double lap = 1;
        double end = AtNear?.Id == room?.Id ? Near - lap : Far + lap;
        return new Envelope(Point(Low, Gate), Point(High, end));
    }

    /// <summary>The whole hole with the lap into both rooms: what it cuts out of wall faces.</summary>
    public Envelope Hole => new(Point(Low, Near - 1), Point(High, Far + 1));

    private bool LiesAtNear(Room? room)
    {
        // A room lies on the side that its floor is nearer to; the written wall decides only when the floor does not tell.
        bool byWall = Opening.Wall is Side.North or Side.East;
        if (room is null || room.Floor.IsEmpty)
        {
            return byWall;
        }

        double middle = (Low + High) / 2;
        double near = room.Floor.Distance(room.Floor.Factory.CreatePoint(Point(middle, Near - 1)));
        double far = room.Floor.Distance(room.Floor.Factory.CreatePoint(Point(middle, Far + 1)));
        return near == far ? byWall : near < far;
    }
}
