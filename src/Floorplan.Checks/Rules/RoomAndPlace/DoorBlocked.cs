using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Space;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;
using NetTopologySuite.Index.Strtree;

namespace Floorplan.Checks.Rules.RoomAndPlace;

internal sealed class DoorBlocked : Rule
{
    private const string Approach = "free floor in front of a doorway";

    public override string Name => "door-blocked";

    public override RuleGroup Group => RuleGroup.RoomAndPlace;

    public override string Says
        => "A door leaf hits something, sweeps over a worker's place or meets another leaf, or something fixed stands in front of a "
            + "doorway.";

    public override string Why
        => "A door that cannot open fully narrows the way out and is soon propped open, so the rooms are no longer apart. "
        + "A leaf that swings into a person at work hurts, and worse when that person holds a knife.";

    public override string Mend => "Hinge the door on its other side, let it swing the other way or slide, or move what stands there.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("29 CFR 1910.36(g)(2), US CFR: an exit route is at least 28 in wide at all points", Origin.FoundInPublicCopy, Force.Law),
        new(
            "ISO 14122-2: walkways 600 mm wide at least; taken here as the free depth in front of a doorway",
            Origin.FoundInPublicCopy, Force.Standard),
        new("Geometry of the plan: a leaf cannot sweep through a solid", Origin.OwnAssumption, Force.Measured),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(Approach, 600, LimitUnit.Millimetres, Sources[1], Severity.Warning),
    ];

    public override string Bad => """
        plan "Crab room"
          units metric
        shell shed 6000 x 3000 x 2500
        room boil "Boiling" dirty from west to east
        door d1 boil to outside, south wall, 1000 from west, 900 x 2050, swings out, closes itself
        drain fd1 floor in boil, 4000 from west, centred, 100
        station tank "Holding tank" in boil
          size 1200 x 600 x 800
          place 900 from west, 400 from south
        """;

    public override IReadOnlyList<LineChange> Mended => [new("place 900", "  place against north wall, 900 from west")];

    public override IReadOnlyList<Cause> FollowsFrom => [.. Cause.AtSameThings("overlap"), .. Cause.Misplaced("outside-shell")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var leaves = new STRtree<Opening>();
        var doors = context.Plan.Openings.Where(o => o.Swing is { Swept.IsEmpty: false }).ToList();
        foreach (var door in doors)
        {
            leaves.Insert(door.Swing!.Swept.EnvelopeInternal, door);
        }

        return doors.SelectMany(d => UnderLeaf(context, d).Concat(OtherLeaves(d, leaves)))
            .Concat(context.Plan.Openings.Where(o => o.IsWalkable).SelectMany(o => InFront(context, o)));
    }

    private IEnumerable<Finding> UnderLeaf(CheckContext context, Opening door)
    {
        var swept = door.Swing!.Swept;
        foreach (var station in context.Space.StationsNear(WithWorkers(swept.EnvelopeInternal)))
        {
            if (IsHitByLeaf(door, station))
            {
                yield return CheckContext.Find(this, Severity.Error, [door.Id, station.Id],
                    $"the leaf of {Named.Of(door)} hits {Named.Of(station)}",
                    $"hinge {Named.Of(door)} on its other side, let it swing the other way, or move {Named.Of(station)} out of its "
                        + "quarter circle",
                    door.Span, Touch.Shared(swept, station.Footprint)!.InteriorPoint.Coordinate);
            }
            else if (station.Room.Id == door.Swing.Into?.Id
                && station.Workers.FirstOrDefault(w => Touch.Shared(swept, w.Floor) is not null) is { } worker)
            {
                yield return CheckContext.Find(this, Severity.Warning, [door.Id, station.Id],
                    $"the leaf of {Named.Of(door)} sweeps over the place where worker {worker.Number} of {Named.Of(station)} stands",
                    $"let {Named.Of(door)} swing the other way or slide, or move {Named.Of(station)}",
                    door.Span, worker.Centre.Coordinate);
            }
        }
    }

    private IEnumerable<Finding> OtherLeaves(Opening door, STRtree<Opening> leaves)
    {
        foreach (var other in leaves.Query(door.Swing!.Swept.EnvelopeInternal))
        {
            bool overlapInHeight = door.Sill < other.Sill + other.Height && other.Sill < door.Sill + door.Height;
            if (string.CompareOrdinal(door.Id, other.Id) < 0
                && overlapInHeight
                && door.Swing.Into?.Id == other.Swing!.Into?.Id
                && Touch.Shared(door.Swing.Swept, other.Swing.Swept) is { } shared)
            {
                var later = door.Span.Start > other.Span.Start ? door : other;
                yield return CheckContext.Find(this, Severity.Warning, [door.Id, other.Id],
                    $"the leaves of {Named.Of(door)} and {Named.Of(other)} hit each other when both are open",
                    "hinge one of them on its other side, let it swing the other way, or make it slide",
                    later.Span, shared.InteriorPoint.Coordinate);
            }
        }
    }

    private IEnumerable<Finding> InFront(CheckContext context, Opening door)
    {
        if (context.Limit(this, Approach) is not { } limit)
        {
            yield break;
        }

        foreach (var room in new[] { door.RoomA, door.RoomB }.OfType<Room>())
        {
            var front = Sides.InFrontOf(door, Sides.Into(door, room), limit.Value);
            foreach (var station in context.Space.StationsNear(front.EnvelopeInternal))
            {
                if (!IsHitByLeaf(door, station)
                    && Touch.IsBetween(station, door.Sill.Millimetres, Mover.Person.HeightMm)
                    && Touch.Shared(front, station.Footprint) is { } shared)
                {
                    double free = door.Reveal.Distance(shared);
                    var finding = CheckContext.Find(this, limit, free, [door.Id, station.Id],
                        $"{Named.Of(station)} {(station.Movable ? "is parked" : "stands")} {context.Text(free)} in front of "
                            + $"{Named.Of(door)}",
                        $"move {Named.Of(station)} at least {context.Text(limit.Value - free)} away, or move {Named.Of(door)} along the "
                            + "wall",
                        station.Span, shared.InteriorPoint.Coordinate);
                    yield return station.Movable ? finding with { Severity = Severity.Note } : finding;
                }
            }
        }
    }

    private static bool IsHitByLeaf(Opening door, Station station)
        => door.Swing is { Swept.IsEmpty: false } swing
            && !station.Movable
            && Touch.IsBetween(station, door.Sill.Millimetres, (door.Sill + door.Height).Millimetres)
            && Touch.Shared(swing.Swept, station.Footprint) is not null;

    private static Envelope WithWorkers(Envelope swept)
    {
        var wider = swept.Copy();
        wider.ExpandBy(WorkerSize.Depth.Millimetres);
        return wider;
    }
}
