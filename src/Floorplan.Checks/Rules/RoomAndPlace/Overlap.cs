using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using Floorplan.Model.Space;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;
using NetTopologySuite.Index.Strtree;

namespace Floorplan.Checks.Rules.RoomAndPlace;

internal sealed class Overlap : Rule
{
    public override string Name => "overlap";

    public override RuleGroup Group => RuleGroup.RoomAndPlace;

    public override string Says => "Two things, or a thing and a partition, take up the same place at the same height. Touching is fine.";

    public override string Why
        => "What is drawn through another thing cannot be set down. The mistake hides easily when benches grow by a few inches.";

    public override string Mend => "Move one of them, place it `east of` or `west of` the other so that it follows, or hang it higher.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("Geometry of the plan: two solids cannot share one place", Origin.OwnAssumption, Force.Measured),
    ];

    public override string Bad => """
        plan "Quail room"
          units metric
        shell shed 5000 x 3000 x 2500
        room pack "Packing" clean from west to east
        door d1 pack to outside, south wall, 300 from west, 900 x 2050, swings out, closes itself
        drain fd1 floor in pack, 3500 from west, centred, 100
        station table "Packing table" in pack
          size 1500 x 700 x 900
          place against north wall, 1000 from west
        station scale "Scale" in pack
          size 500 x 500 x 1100
          place against north wall, 2300 from west
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("place against north wall, 2300", "  place against north wall, east of table"),
    ];

    public override IReadOnlyList<Cause> FollowsFrom => [.. Cause.Misplaced("outside-shell")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var walls = new STRtree<Partition>();
        foreach (var partition in context.Plan.Partitions)
        {
            walls.Insert(partition.Outline.EnvelopeInternal, partition);
        }

        foreach (var station in context.Plan.Stations)
        {
            foreach (var finding in WithStations(context, station).Concat(WithWalls(context, station, walls)))
            {
                yield return finding;
            }
        }
    }

    private IEnumerable<Finding> WithStations(CheckContext context, Station station)
    {
        foreach (var other in context.Space.StationsNear(station.Footprint.EnvelopeInternal).Where(o => o.Item < station.Item))
        {
            if (Touch.IsBetween(station, other.Bottom.Millimetres, other.Top.Millimetres)
                && Touch.Shared(station.Footprint, other.Footprint) is { } shared)
            {
                double by = Breadth(shared);
                yield return CheckContext.Find(this, Severity.Error, [station.Id, other.Id],
                    $"{Named.Of(station)} and {Named.Of(other)} overlap by {context.Text(by)} at the same height",
                    $"move one of them by {context.Text(by)}, or place one beside the other so that it follows",
                    station.Span, shared.InteriorPoint.Coordinate) with
                { Measured = by, Misplaced = true };
            }
        }
    }

    private IEnumerable<Finding> WithWalls(CheckContext context, Station station, STRtree<Partition> walls)
    {
        foreach (var wall in walls.Query(station.Footprint.EnvelopeInternal))
        {
            if (Touch.IsBetween(station, 0, wall.Height.Millimetres)
                && Touch.Shared(station.Footprint, wall.Outline) is { } shared
                && Touch.Beyond(shared, HolesAround(context, station)) is { } solid)
            {
                double by = Breadth(solid);
                yield return CheckContext.Find(this, Severity.Error, [station.Id, wall.RoomA, wall.RoomB],
                    $"{Named.Of(station)} stands {context.Text(by)} into the partition between {wall.RoomA} and {wall.RoomB}",
                    $"move it by {context.Text(by)}, or cut an opening in the partition that it passes through",
                    station.Span, solid.InteriorPoint.Coordinate) with
                { Measured = by, Misplaced = true };
            }
        }
    }

    // A conveyor may run through a hatch: holes that take the thing's whole height are not wall.
    private static Geometry HolesAround(CheckContext context, Station station)
    {
        var holes = context.Plan.Openings
            .Where(o => o.Sill <= station.Bottom
                && o.Sill + o.Height >= station.Top
                && o.Reveal.EnvelopeInternal.Intersects(station.Footprint.EnvelopeInternal))
            .Select(o => (Geometry)o.Reveal)
            .ToArray();
        return Overlays.Sum(holes);
    }

    /// <summary>How far one thing must move to be clear, along the shorter side of the widest piece of floor that both cover.</summary>
    private static double Breadth(Geometry shared) => Enumerable.Range(0, shared.NumGeometries)
        .Select(i => shared.GetGeometryN(i).EnvelopeInternal)
        .Max(piece => Math.Min(piece.Width, piece.Height));
}
