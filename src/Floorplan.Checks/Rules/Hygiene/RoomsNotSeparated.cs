using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using Floorplan.Model.Space;
using NetTopologySuite.Index.Strtree;

namespace Floorplan.Checks.Rules.Hygiene;

internal sealed class RoomsNotSeparated : Rule
{
    /// <summary>Dirty, toilet and plant against clean and cold; the classes between are a buffer.</summary>
    private const int UnlikeRanks = 2;

    public override string Name => "rooms-not-separated";

    public override RuleGroup Group => RuleGroup.Hygiene;

    public override string Says
        => "A dirty and a clean room are joined by more than a hatch, a chute or a door that closes itself, or the wall between them "
            + "does not reach the ceiling or is missing.";

    public override string Why
        => "Splash, steam, feathers and flies cross an open doorway by themselves. A door that must be pulled shut stands open, because "
            + "hands are full.";

    public override string Mend
        => "Use a hatch, let the door close itself, build the wall up to the ceiling, or put a staff or dry room between. "
            + "Where the work is split in time, with cleaning between, `accept` it and say so: European law on slaughter allows that.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        .. HygieneSources.RoomsApart,
        HygieneSources.Ranks,
    ];

    public override string Bad => """
        plan "Goose unit"
          units metric
        shell shed 8000 x 3000 x 2500
        room pluck "Plucking" dirty from west to 4000
        room dress "Dressing" clean from 4000 to east
        partitions thickness 80
        door d1 pluck to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself
        door d2 pluck to dress, 300 from south, 900 x 2050, swings dress
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("door d2", "door d2 pluck to dress, 300 from south, 900 x 2050, swings dress, closes itself"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        string limit = $"unlike rooms apart ({context.SourceOf(this).Text})";
        return context.Plan.Openings.Where(IsTooOpen).Select(OfOpening)
            .Concat(LowWalls(context))
            .Concat(MissingWalls(context))
            .Select(f => f with { Limit = limit });
    }

    private static bool IsTooOpen(Opening opening)
        => opening is { RoomA: { } a, RoomB: { } b } && AreUnlike(a, b)
            && opening.Kind is OpeningKind.Opening or OpeningKind.Door or OpeningKind.CargoDoor
            && !(opening.Kind == OpeningKind.Door && opening.ClosesItself);

    private Finding OfOpening(Opening opening)
    {
        string what = opening.Kind == OpeningKind.Opening ? "stands open" : "does not close itself";
        return CheckContext.Find(this, Severity.Warning, [opening.Id, opening.RoomA!.Id, opening.RoomB!.Id],
            $"{Named.Of(opening)} between {Described(opening.RoomA)} and {Described(opening.RoomB)} {what}",
            opening.Kind == OpeningKind.Opening
                ? "make it a hatch, or a door that `closes itself`"
                : $"add `closes itself` to {Named.Of(opening)} and fit a closer, or make it a hatch",
            opening.Span, opening.Centre.Coordinate) with
        { NewWords = opening.Kind == OpeningKind.Door ? "closes itself" : null };
    }

    private IEnumerable<Finding> LowWalls(CheckContext context)
    {
        var rooms = context.Plan.Rooms.ToDictionary(r => r.Id);
        foreach (var wall in context.Plan.Partitions)
        {
            // A partition may have floor that belongs to no room on one side.
            if (!rooms.TryGetValue(wall.RoomA, out var a) || !rooms.TryGetValue(wall.RoomB, out var b))
            {
                continue;
            }

            var ceiling = Length.Min(a.CeilingHeight, b.CeilingHeight);
            double gap = (ceiling - wall.Height).Millimetres;
            if (AreUnlike(a, b) && gap > Touch.ToleranceMm)
            {
                yield return CheckContext.Find(this, Severity.Warning, [a.Id, b.Id],
                    $"the partition between {Described(a)} and {Described(b)} ends {context.Text(gap)} below the ceiling",
                    $"build it up to {context.Text(ceiling)}", b.Span, wall.Outline.InteriorPoint.Coordinate) with
                { Measured = wall.Height.Millimetres };
            }
        }
    }

    private IEnumerable<Finding> MissingWalls(CheckContext context)
    {
        var walled = context.Plan.Partitions.SelectMany(p => new[] { (p.RoomA, p.RoomB), (p.RoomB, p.RoomA) }).ToHashSet();
        var floors = new STRtree<Room>();
        foreach (var room in context.Plan.Rooms)
        {
            floors.Insert(room.Floor.EnvelopeInternal, room);
        }

        foreach (var room in context.Plan.Rooms)
        {
            var near = room.Floor.EnvelopeInternal.Copy();
            near.ExpandBy(Touch.ToleranceMm);
            foreach (var other in floors.Query(near))
            {
                if (room.Span.Start < other.Span.Start && AreUnlike(room, other) && !walled.Contains((room.Id, other.Id))
                    && Overlays.Common(room.Floor.Buffer(Touch.ToleranceMm), other.Floor) is { Area: > 0 } seam
                    && Math.Max(seam.EnvelopeInternal.Width, seam.EnvelopeInternal.Height) > 2 * Touch.ToleranceMm + 1)
                {
                    yield return CheckContext.Find(this, Severity.Warning, [room.Id, other.Id],
                        $"no wall stands between {Described(room)} and {Described(other)}",
                        "add `partitions` with a thickness", other.Span, seam.InteriorPoint.Coordinate);
                }
            }
        }
    }

    private static bool AreUnlike(Room a, Room b) => Math.Abs(HygieneRank.Of(a) - HygieneRank.Of(b)) >= UnlikeRanks;

    private static string Described(Room room) => $"{Named.Of(room)}, {room.Class.ToString().ToLowerInvariant()},";
}
