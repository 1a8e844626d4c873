using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Flows;
using Floorplan.Model.Rooms;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Checks.Rules.Hygiene;

/// <summary>The way in of those who work on the clean side only: whoever works on the dirty side first belongs to another rule.</summary>
internal sealed class CrewThroughDirty : Rule
{
    public override string Name => "crew-through-dirty";

    public override RuleGroup Group => RuleGroup.Hygiene;

    public override string Says
        => "A crew of the clean side comes in through a dirty room, or changes in a room that is entered from one.";

    public override string Why
        => "Boots that crossed the kill floor or the gutting floor carry it to the packing table. Clean clothes put on behind it are not "
            + "clean for long.";

    public override string Mend
        => "Give the changing room a door of its own to outside, on the clean side, and lead the `flow people` through it.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new(
            "Malaysia, veterinary code of practice for poultry plants 2017, 9.2.2: staff of the edible side do not cross inedible rooms",
            Origin.FoundInPublicCopy),
        HygieneSources.OneWayFlow, HygieneSources.Ranks,
    ];

    public override string Bad => """
        plan "Bream unit"
          units metric
        shell shed 10 m x 4000 x 2500
        room gut   "Gutting" dirty from west to 4000
        room lobby "Change" staff from 4000 to 6000
        room pack  "Packing" clean from 6000 to east
        partitions thickness 80
        door d1 gut to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself
        door d2 gut to lobby, 2500 from south, 900 x 2050, swings lobby, closes itself
        door d3 lobby to pack, 2500 from south, 900 x 2050, swings pack, closes itself
        drain fd1 floor in gut, 2000 from west, centred, 100
        drain fd2 floor in pack, 2000 from west, centred, 100
        sink s1 hand in lobby, 400 x 350, against south wall, 400 from west
        sink s2 hand in pack, 400 x 350, against south wall, 2500 from west
        station table "Packing table" in pack
          size 1500 x 600 x 900
          place against south wall, 400 from west
          worker north
        flow people "Packers"
          outside -> d1 -> d2 -> s1 -> d3 -> table
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("door d2", "door d2 lobby to outside, north wall, 500 from west, 900 x 2050, swings out, closes itself"),
        new("outside -> d1", "  outside -> d2 -> s1 -> d3 -> table"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        // Who comes in unwashed is told by that rule, with the same way out.
        var unwashed = context.Found.Where(f => f.Rule == "unwashed-entry" && f.Severity == Severity.Warning)
            .Select(f => f.Span.Start).ToHashSet();
        foreach (var chain in Journey.Of(context.Space, Stream.People).GroupBy(j => (j.Flow.Span.Start, j.Legs[0].Leg.Chain)))
        {
            var journeys = chain.ToList();
            if (journeys[0].From is OutsideStop && !journeys.Exists(j => unwashed.Contains(j.Legs[^1].Leg.Span.Start))
                && WayIn(journeys) is { } way)
            {
                yield return Found(journeys[0], way.Dirty, way.Changing, way.Clean);
            }
        }
    }

    private static (Room Dirty, Room? Changing, Room Clean)? WayIn(IReadOnlyList<Journey> journeys)
    {
        Room? dirty = null, changing = null;
        foreach (var journey in journeys)
        {
            foreach (var room in journey.Rooms)
            {
                switch (room?.Class)
                {
                    case null:
                        (dirty, changing) = (null, null);
                        break;
                    case HygieneClass.Dirty:
                        dirty ??= room;
                        break;
                    case HygieneClass.Staff:
                        changing = dirty is null ? null : room;
                        break;
                    case HygieneClass.Clean:
                        return dirty is null ? null : (dirty, changing, room);
                    default:
                        break;
                }
            }

            // Whoever works there on the way is of the dirty crew.
            if (journey.To is StationStop { Station: { Room.Class: HygieneClass.Dirty, Workers.Count: > 0 } })
            {
                return null;
            }
        }

        return null;
    }

    private Finding Found(Journey journey, Room dirty, Room? changing, Room clean)
    {
        string who = journey.Flow.Label.Length == 0 ? "people" : journey.Flow.Label;
        string change = changing is null ? "" : $", and change behind it in {Named.Of(changing)}";
        return CheckContext.Find(this, Severity.Warning,
            [.. new[] { dirty, changing, clean }.OfType<Room>().Select(r => r.Id)],
            $"{who} come in through {Named.Of(dirty)} to work in {Named.Of(clean)}{change}",
            changing is null
                ? $"give {Named.Of(clean)} a changing room with its own door to outside, and lead them through it"
                : $"give {Named.Of(changing)} its own door to outside, and close the one to {Named.Of(dirty)}",
            journey.Legs[0].Leg.Span, journey.FirstStretchIn(dirty)?.InteriorPoint.Coordinate ?? dirty.Floor.InteriorPoint.Coordinate);
    }
}
