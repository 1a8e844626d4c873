using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using Floorplan.Model.Space.Keeping;
using Floorplan.Model.Space.Search;
using NetTopologySuite.Geometries;
using NetTopologySuite.Index.Strtree;

namespace Floorplan.Model.Space.Free;

/// <summary>The free floor of a whole plan for one width and height, room by room as it is asked for.</summary>
internal sealed class FloorMap
{
    /// <summary>Ground kept round the shell for walking round it, besides the mover's width, in mm. Own assumption.</summary>
    private const double Apron = 1000;

    /// <summary>How far outside a door somebody counts as outside: one step, in mm. Own assumption.</summary>
    private const double Step = 300;

    private readonly Plan plan;
    private readonly Obstacles obstacles;
    private readonly STRtree<WallPiece> walls = new();
    private readonly FreeRegion?[] regions;
    private readonly Dictionary<string, int> numbers = [];
    private readonly Dictionary<int, FreePlace?> outside = [];
    private int corners;

    public FloorMap(
        Plan plan, Obstacles obstacles, IReadOnlyList<Passage> passages, Mover mover, bool cargoDoors, KeptSpace? kept = null)
    {
        Kept = kept;
        Passages = passages;
        this.plan = plan;
        this.obstacles = obstacles;
        Mover = mover;
        Open = [.. passages.Where(p => p.Lets(mover, cargoDoors))];
        foreach (var piece in Walls.Of(plan, Open))
        {
            walls.Insert(piece.Box, piece);
        }

        regions = new FreeRegion?[plan.Rooms.Count + 1];
        for (int i = 0; i < plan.Rooms.Count; i++)
        {
            numbers.TryAdd(plan.Rooms[i].Id, i);
        }
    }

    public Mover Mover { get; }

    /// <summary>What plans before this one leave; null keeps nothing.</summary>
    public KeptSpace? Kept { get; }

    /// <summary>All of the plan, by number; those that the mover does not fit through too.</summary>
    public IReadOnlyList<Passage> Passages { get; }

    /// <summary>Notes of the search that runs on this map; one at a time.</summary>
    public Turns Turns { get; } = new();

    /// <summary>Openings that this mover fits through.</summary>
    public IReadOnlyList<Passage> Open { get; }

    public int RegionCount => regions.Length;

    /// <summary>Of the region of a room (null is outside); -1 when it is not of this plan.</summary>
    public int NumberOf(Room? room) => room is null ? plan.Rooms.Count : numbers.GetValueOrDefault(room.Id, -1);

    /// <summary>Null when the room is not of this plan.</summary>
    public FreeRegion? Region(Room? room) =>
        room is null ? Region(plan.Rooms.Count) : numbers.TryGetValue(room.Id, out int number) ? Region(number) : null;

    public FreeRegion Region(int number) => regions[number] ??= Build(number < plan.Rooms.Count ? plan.Rooms[number] : null, number);

    /// <summary>Where one is outside after passing an outer door, or null when the ground there is not free.</summary>
    public FreePlace? JustOutside(Passage passage) => outside.TryGetValue(passage.Number, out var known)
        ? known
        : outside[passage.Number] = Region(plan.Rooms.Count).Settle(passage.Before(null, HalfWidth.Of(Mover) + Step));

    private FreeRegion Build(Room? room, int number)
    {
        double half = HalfWidth.Of(Mover);
        var parts = new List<Polygon> { room is null ? Ground() : room.Floor };
        var passages = Open.Where(p => p.LeadsTo(room)).ToList();
        parts.AddRange(
            passages.Select(p => Shape.Factory.ToGeometry(p.HalfAt(room)) is Polygon half ? half : Shape.Factory.CreatePolygon()));
        var near = new Envelope();
        parts.ForEach(p => near.ExpandToInclude(p.EnvelopeInternal));
        near = Wider(near, half);
        var doorways = passages.Select(p => Wider(p.Hole, half)).ToList();

        // A wall behind a wall is never nearer than the front one, except through a doorway.
        var solid = (walls.IsEmpty || near.IsNull ? [] : walls.Query(near))
            .Where(w => w.Owner == number || doorways.Exists(d => d.Intersects(w.Box))).Select(w => w.Ring).ToList();
        var things = (room is null ? NearGround(doorways, near) : obstacles.Near(near))
            .Where(o => o.Blocks(Mover.HeightMm)).OrderBy(o => o.Station.Item).Select(o => o.Ring).ToList();
        var (mesh, scale) = Kept is null
            ? FreeFloors.Of(parts, solid, things, half)
            : Kept.Mesh(parts, solid, things, half, () => FreeFloors.Of(parts, solid, things, half));
        var region = new FreeRegion(room, number, mesh, scale, passages, corners);
        corners += region.Mesh.Points.Length;
        return region;
    }

    /// <summary>What stands outside the shell or in its doorways: the thousands inside cannot be in the way of walking round it.</summary>
    private IEnumerable<Obstacle> NearGround(List<Envelope> doorways, Envelope near)
    {
        var inside = plan.Shell.Outside.EnvelopeInternal;
        bool plain = plan.Shell.Outside.IsRectangle;
        return obstacles.Near(near).Where(o => !plain || !inside.Contains(o.Box) || doorways.Exists(d => d.Intersects(o.Box)));
    }

    /// <summary>A box with all that can take floor from it: half a mover, 8 % for cut corners, and rounding.</summary>
    private static Envelope Wider(Envelope box, double half)
    {
        var wider = box.Copy();
        wider.ExpandBy((half * 1.1) + 1);
        return wider;
    }

    private Polygon Ground()
    {
        var box = plan.Shell.Outside.EnvelopeInternal.Copy();
        box.ExpandBy(Apron + Mover.WidthMm);
        return Shape.Factory.ToGeometry(box) is Polygon around && !plan.Shell.Outside.IsEmpty
            ? Shape.Factory.CreatePolygon((LinearRing)around.ExteriorRing, [(LinearRing)plan.Shell.Outside.ExteriorRing])
            : Shape.Factory.CreatePolygon();
    }
}
