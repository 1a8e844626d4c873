using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model;
using Floorplan.Model.Rooms;
using Floorplan.Model.Services;
using Floorplan.Model.Shapes;
using Floorplan.Model.Shells;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Power.Panels;
using Floorplan.Sizing.Working;
using NetTopologySuite.Geometries;

namespace Floorplan.Sizing.Power;

/// <summary>
/// The floor before an electrical panel that is kept free. It need not be centred on the panel, so that beside a corner it is moved into
/// the room: NEC 110.26(A)(2) asks for a width and not for a middle.
/// </summary>
/// <param name="Wall">The side of the room that the panel hangs on.</param>
/// <param name="Face">Where the wall is, across it, in mm.</param>
/// <param name="From">Where the space begins along the wall, in mm.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Free">How far the floor is free before the panel, in mm.</param>
/// <param name="EndedBy">What stands at the end of the free floor; null is the wall opposite.</param>
public sealed record WorkingSpace(Panel Panel, Side Wall, double Face, double From, double To, Figure Free, Station? EndedBy)
{
    /// <summary>Voltage from a line to ground, in V; null where the panel does not say its voltage.</summary>
    public double? ToGround { get; init; }

    /// <summary>What is opposite whoever works at it.</summary>
    public Faced Faces { get; init; }

    /// <summary>30 in, NEC 110.26(A)(2), in mm; a wider panel is not told to the plan.</summary>
    public const double Width = 762;

    /// <summary>6 ft 6 in, NEC 110.26(A)(3); what hangs higher is out of the way.</summary>
    private static readonly Length Height = Length.FromMillimetres(1981.2);

    private static readonly Source Nec =
        new("NEC 2023 110.26(A)(2) and (3): 30 in wide and 6 ft 6 in high", Origin.FromMemory, Force.ModelCode);

    /// <summary>A panel on the face of the wall opposite lies this near its line, in mm.</summary>
    private const double Reached = 50;

    /// <summary>Two things that touch do not stand in each other, in mm; a rounding of the geometry.</summary>
    private const double Touching = 0.5;

    public static IReadOnlyList<WorkingSpace> Of(PlanFacts facts) =>
        [.. facts.Plan.Services.OfType<Panel>().Where(s => s is { Room: not null, Wall: not null }).Select(p => Of(facts.Plan, p))];

    /// <summary>The space on plan, so deep.</summary>
    /// <param name="depth">In mm.</param>
    public Polygon Shape(double depth) => Strip(Wall, Face, From, To, depth);

    private static WorkingSpace Of(Plan plan, Panel panel)
    {
        var room = panel.Room!;
        var wall = panel.Wall!.Value;
        bool alongX = wall.RunsEastWest();
        double at = (alongX ? panel.At.X : panel.At.Y).Millimetres;
        double face = (alongX ? panel.At.Y : panel.At.X).Millimetres;
        var (low, high) = Along(room, wall, at, face);
        double middle = high - low < Width ? (low + high) / 2 : Math.Clamp(at, low + (Width / 2), high - (Width / 2));
        var (from, to) = (middle - (Width / 2), middle + (Width / 2));
        var (free, by) = Depth(plan, room, wall, face, from, to);
        string ends = by?.Id ?? "the wall opposite";
        return new WorkingSpace(panel, wall, face, from, to, new Figure
        {
            Name = "free floor before the panel",
            Of = panel.Id,
            Value = free,
            Kind = QuantityKind.Length,
            Text = QuantityText.Length(Length.FromMillimetres(Math.Round(free)), plan.Units),
            Inputs =
            [
                FigureInput.Said("panel " + panel.Id, "its place on the wall", panel.Span),
                FigureInput.Said(ends, "its outline", by?.Span ?? room.Span),
                FigureInput.Taken("width of the space", QuantityText.Length(Length.FromMillimetres(Width), plan.Units), Nec),
            ],
            Formula = "from the wall of the panel to the nearest fixed thing before it, over the width of the space",
            Substituted = $"from the wall to {ends}",
            Source = Nec,
        }, by)
        {
            ToGround = panel.Ratings.Any(r => r.Unit.Kind == QuantityKind.Voltage && r.Base > 0)
                ? PanelSystem.Of(panel, plan.Head.Code).ToNeutral
                : null,
            Faces = FacedBy(plan, panel, Strip(wall, face, from, to, free + Reached), by),
        };
    }

    /// <summary>Steel walls and machines are grounded, timber and free floor are not; another panel is live when it is open.</summary>
    private static Faced FacedBy(Plan plan, Panel panel, Polygon upTo, Station? by)
    {
        var opposite = upTo.EnvelopeInternal;
        bool live = plan.Services.OfType<Panel>().Any(p => p != panel
            && p.Room?.Id == panel.Room!.Id
            && p.Wall == panel.Wall!.Value.Opposite()
            && opposite.Intersects(p.At.Coordinate));
        return live ? Faced.Live : by is not null || plan.Shell.Kind != ShellKind.Shed ? Faced.Grounded : Faced.Nothing;
    }

    /// <summary>The stretch of the room's wall that the panel hangs on.</summary>
    private static (double Low, double High) Along(Room room, Side wall, double at, double face)
    {
        var bounds = room.Bounds;
        var (low, high) = wall.RunsEastWest()
            ? (bounds.West.Millimetres, bounds.East.Millimetres)
            : (bounds.South.Millimetres, bounds.North.Millimetres);
        var stretches = Overlays.Common(Strip(wall, face, low, high, 2 * Touching), room.Floor);
        for (int i = 0; i < stretches.NumGeometries; i++)
        {
            var box = stretches.GetGeometryN(i).EnvelopeInternal;
            var (start, end) = wall.RunsEastWest() ? (box.MinX, box.MaxX) : (box.MinY, box.MaxY);
            if (start - Touching <= at && at <= end + Touching)
            {
                return (start, end);
            }
        }

        return (low, high);
    }

    /// <summary>How far the floor is free from the wall, and what ends it.</summary>
    private static (double Free, Station? By) Depth(Plan plan, Room room, Side wall, double face, double from, double to)
    {
        double most = wall.RunsEastWest() ? room.Bounds.Depth.Millimetres : room.Bounds.Width.Millimetres;
        var strip = Strip(wall, face, from + Touching, to - Touching, most);
        var walls = Overlays.Less(strip, room.Floor);
        double end = walls.IsEmpty ? most : Math.Min(most, Beyond(walls));
        return plan.Stations
            .Where(s => s.Room.Id == room.Id && !s.Movable && s.Bottom < Height)
            .Select(s => (Free: Near(Overlays.Common(s.Footprint, strip)), By: (Station?)s))
            .Append((Free: end, By: null))
            .MinBy(s => s.Free);

        // The wall itself may differ from the edge of the floor by a rounding.
        double Beyond(Geometry geometry)
        {
            var parts = Enumerable.Range(0, geometry.NumGeometries).Select(geometry.GetGeometryN).Where(g => g.Area > Touching * Touching);
            return parts.Select(Near).Append(most).Min();
        }

        double Near(Geometry geometry) => geometry.IsEmpty ? double.PositiveInfinity : geometry.Coordinates.Min(c => Off(c));

        double Off(Coordinate c) => wall switch
        {
            Side.North => face - c.Y,
            Side.South => c.Y - face,
            Side.East => face - c.X,
            _ => c.X - face,
        };
    }

    private static Polygon Strip(Side wall, double face, double from, double to, double depth)
    {
        double far = wall is Side.North or Side.East ? face - depth : face + depth;
        var box = wall.RunsEastWest() ? new Envelope(from, to, face, far) : new Envelope(face, far, from, to);
        return (Polygon)Model.Shapes.Shape.Factory.ToGeometry(box);
    }
}

/// <summary>What faces whoever works at a panel; the conditions 1 to 3 of NEC 110.26(A)(1).</summary>
public enum Faced
{
    Nothing,

    /// <summary>Steel, concrete, tile and machines count as grounded.</summary>
    Grounded,
    Live,
}
