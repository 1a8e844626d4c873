using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Language.Text;
using Floorplan.Model;
using Floorplan.Model.Flows;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using Floorplan.Model.Shells;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Tests.Model.Space.Support;

/// <summary>Builds plans from numbers in mm, without text, so that these tests stand on geometry alone.</summary>
internal sealed class TestPlan(double width, double depth, double wall = 100)
{
    private readonly List<Room> rooms = [];
    private readonly List<Opening> openings = [];
    private readonly List<Station> stations = [];
    private readonly List<Flow> flows = [];
    private readonly List<OverheadRail> rails = [];

    public static SourceSpan Nowhere { get; } = new(new SourceText("", "test.unit"), 0, 0);

    public static Polygon Rectangle(double west, double south, double east, double north) =>
        Box(west, south, east, north).ToPolygon();

    public static Polygon Turned(Polygon shape, double degrees)
    {
        var about = shape.Centroid;
        return (Polygon)NetTopologySuite.Geometries.Utilities.AffineTransformation
            .RotationInstance(degrees * Math.PI / 180, about.X, about.Y).Transform(shape);
    }

    public static Polygon Round(double x, double y, double diameter)
    {
        var ring = Enumerable.Range(0, 32).Select(i => new Coordinate(
            x + (diameter / 2 * Math.Cos(i * Math.PI / 16)), y + (diameter / 2 * Math.Sin(i * Math.PI / 16)))).ToList();
        ring.Add(ring[0].Copy());
        return Shape.Factory.CreatePolygon([.. ring]);
    }

    public Room Room(string id, double west, double south, double east, double north, Polygon? floor = null)
    {
        var room = new Room
        {
            Id = id,
            Label = id,
            Class = HygieneClass.Clean,
            Floor = floor ?? Rectangle(west, south, east, north),
            Bounds = Box(west, south, east, north),
            CeilingHeight = Length.FromMillimetres(2500),
            WashedDown = true,
        };
        rooms.Add(room);
        return room;
    }

    /// <summary>An opening in a wall that runs along x between two faces; a null room is outside.</summary>
    public Opening Opening(
        string id, Room? south, Room? north, double west, double east, double near, double far, OpeningKind kind = OpeningKind.Door,
        double height = 2050, double sill = 0) =>
        Add(
            id, kind, south, north, Side.North, Rectangle(west, near, east, far), new(west, (near + far) / 2), new(east, (near + far) / 2),
            east - west, height, sill);

    /// <summary>An opening in a wall that runs along y between two faces; a null room is outside.</summary>
    public Opening UprightOpening(
        string id, Room? west, Room? east, double south, double north, double near, double far, OpeningKind kind = OpeningKind.Door,
        double height = 2050, double sill = 0) =>
        Add(
            id, kind, west, east, Side.East, Rectangle(near, south, far, north), new((near + far) / 2, south), new((near + far) / 2, north),
            north - south, height, sill);

    public Station Station(
        string id, Room room, Polygon footprint, double top = 900, double bottom = 0, Side? worker = null, bool movable = false)
    {
        var box = footprint.EnvelopeInternal;
        var station = new Station
        {
            Id = id,
            Label = id,
            Role = StationRole.Station,
            Item = stations.Count + 1,
            Room = room,
            Footprint = footprint,
            Bounds = Box(box.MinX, box.MinY, box.MaxX, box.MaxY),
            Top = Length.FromMillimetres(top),
            WorkHeight = Length.FromMillimetres(top),
            Bottom = Length.FromMillimetres(bottom),
            Movable = movable,
            Workers = worker is { } side ? [Worker(box, side)] : [],
        };
        stations.Add(station);
        return station;
    }

    public void Rail(string id, params (double X, double Y)[] path) => rails.Add(new OverheadRail(
        id, id, Shape.Factory.CreateLineString([.. path.Select(p => new Coordinate(p.X, p.Y))]), Length.FromMillimetres(2200), null, [],
        Nowhere));

    public Flow Flow(Stream stream, CarriageKind kind, double? trolley, params Stop[] stops)
    {
        var carriage = new Carriage(kind, trolley is { } w ? Length.FromMillimetres(w) : null);
        var legs = stops.Zip(stops.Skip(1), (a, b) => new Leg(a, b, carriage, Period.During, 0, Nowhere)).ToList();
        var flow = new Flow(stream, stream.ToString(), legs, Nowhere);
        flows.Add(flow);
        return flow;
    }

    public Plan Build() => new()
    {
        Source = Nowhere.Source,
        Head = new PlanHead { Title = "test" },
        Shell = new Shell
        {
            Kind = ShellKind.Shed,
            Name = "shed",
            Outside = Rectangle(-wall, -wall, width + wall, depth + wall),
            BareInside = Rectangle(0, 0, width, depth),
            Finished = Rectangle(0, 0, width, depth),
            CeilingHeight = Length.FromMillimetres(2500),
            Datum = Point(-wall, -wall),
            DatumHeight = default,
            Top = Length.FromMillimetres(2700),
        },
        Rooms = rooms,
        Openings = openings,
        Stations = stations,
        Flows = flows,
        Rails = rails,
    };

    public static PlanPoint Point(double x, double y) => new(Length.FromMillimetres(x), Length.FromMillimetres(y));

    private static Box Box(double west, double south, double east, double north) =>
        new(Length.FromMillimetres(west), Length.FromMillimetres(south), Length.FromMillimetres(east), Length.FromMillimetres(north));

    private static WorkerPlace Worker(Envelope box, Side side)
    {
        var (x, y) = (box.Centre.X, box.Centre.Y);
        double half = WorkerSize.Depth.Millimetres / 2;
        var c = side switch
        {
            Side.North => (x, box.MaxY + half),
            Side.South => (x, box.MinY - half),
            Side.East => (box.MaxX + half, y),
            _ => (box.MinX - half, y),
        };
        return new WorkerPlace(1, Point(c.Item1, c.Item2), side, Rectangle(c.Item1 - 200, c.Item2 - 200, c.Item1 + 200, c.Item2 + 200));
    }

    private Opening Add(
        string id, OpeningKind kind, Room? a, Room? b, Side wallSide, Polygon reveal, (double X, double Y) start, (double X, double Y) end,
        double clear, double height, double sill)
    {
        // The wall is named from the inside room when the first one is outside.
        var side = a is not null ? wallSide : wallSide == Side.North ? Side.South : Side.West;
        var opening = new Opening
        {
            Id = id,
            Kind = kind,
            RoomA = a,
            RoomB = b,
            Wall = side,
            Width = Length.FromMillimetres(clear),
            Height = Length.FromMillimetres(height),
            Sill = Length.FromMillimetres(sill),
            Start = Point(start.X, start.Y),
            End = Point(end.X, end.Y),
            Reveal = reveal,
            InShell = a is null || b is null,
        };
        openings.Add(opening);
        return opening;
    }
}
