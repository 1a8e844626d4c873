using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;
using Floorplan.Model.Flows;
using Floorplan.Model.Rooms;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Checks.Rules.Hygiene;

internal sealed class StaffCrossesBack : Rule
{
    public override string Name => "staff-crosses-back";

    public override RuleGroup Group => RuleGroup.Hygiene;

    public override string Says
        => "In working time people go from a clean or cold room through a dirty one, and from there to a clean room again, to the toilet "
            + "or to where they change. "
        + "Going out at the end of the day does not count. Where they come back unwashed, unwashed-entry says so.";

    public override string Why
        => "Boots, apron and sleeves take the dirty room along. Whoever crosses ten times a day will not change ten times.";

    public override string Mend
        => "Keep one crew on each side, give the clean side its own door to toilet and change, or hand things over through a hatch.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new Source("Malaysia, veterinary code of practice for poultry plants 2017, 9.2.2: staff of the edible side do not cross "
            + "inedible rooms "
            + "on the way to where they change, rest or wash", Origin.FoundInPublicCopy, Force.Guidance)
            .In("my").For(Trade.Poultry),
        HygieneSources.OneWayFlow, HygieneSources.Ranks,
    ];

    public override string Bad => """
        plan "Trout hut"
          units metric
        shell shed 12000 x 3000 x 2500
        room gut   "Gutting" dirty from west to 4000
        room pack  "Packing" clean from 4000 to 9000
        room lobby "Change"  staff from 9000 to east
        partitions thickness 80
        door d1 gut to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself
        door d2 lobby to outside, east wall, 1000 from south, 900 x 2050, swings out, closes itself
        door d3 pack to lobby, 1000 from south, 900 x 2050, swings lobby, closes itself
        door d4 gut to pack, 1000 from south, 900 x 2050, swings gut, closes itself
        drain fd1 floor in gut, 2000 from west, centred, 100
        drain fd2 floor in pack, 2000 from west, centred, 100
        sink s3 hand in pack, 400 x 350, against south wall, 2500 from west
        sink s1 hand in lobby, 400 x 350, against north wall, 600 from west
        sink s2 hand in gut, 400 x 350, against north wall, 3000 from west
        station tank "Fish tank" in gut
          size 1500 x 600 x 900
          place against north wall, 500 from west
          worker south
        station table "Packing table" in pack
          size 1500 x 600 x 900
          place against north wall, 1500 from west
          worker south
        flow product
          outside -> d1 -> tank -> d4 -> table   by hand
        flow people "Packer"
          outside -> d2 -> s1 -> d3 -> table -> tank -> table
        """;

    public override IReadOnlyList<LineChange> Mended => [new("outside -> d2", "  outside -> d2 -> s1 -> d3 -> table")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var sinks = context.Plan.Stations.Where(s => s.IsHandSink).Select(s => s.Room.Id).ToHashSet();
        foreach (var flow in Journey.Of(context.Space, Stream.People).GroupBy(j => j.Flow, ReferenceEqualityComparer.Instance))
        {
            var person = new Person(sinks);
            string last = "";
            foreach (var journey in flow.Where(j => j.Legs[0].Leg.Period == Period.During))
            {
                // A line that does not go on from the end of the one before is another person.
                person = journey.From.Name == last ? person : new Person(sinks);
                last = journey.To.Name;
                if (person.Walk(journey) is { } crossed)
                {
                    yield return Found(journey, crossed.Through, crossed.To);
                    break;
                }
            }
        }
    }

    private Finding Found(Journey journey, Room through, Room to)
    {
        string who = journey.Flow.Label.Length == 0 ? "people" : journey.Flow.Label;
        var inside = journey.FirstStretchIn(to);
        return CheckContext.Find(this, Severity.Warning, [.. journey.Things.Concat([through.Id, to.Id]).Distinct()],
            $"{who} go from the clean side through {Named.Of(through)} and on to {Named.Of(to)} in working time",
            $"let another person work in {Named.Of(through)}, or give the clean side a way that avoids it", journey.Legs[0].Leg.Span,
            inside?.Coordinate ?? to.Floor.InteriorPoint.Coordinate);
    }

    /// <summary>One person on the way: where from the clean side, through which dirty room, and whether washed since.</summary>
    private sealed class Person(HashSet<string> sinks)
    {
        private bool onCleanSide;
        private bool washed;
        private Room? through;

        public (Room Through, Room To)? Walk(Journey journey)
        {
            for (int i = 0; i < journey.Rooms.Count; i++)
            {
                bool atSink = i == journey.Rooms.Count - 1 && journey.To is StationStop { Station.IsHandSink: true };
                if (Step(journey.Rooms[i], atSink) is { } to)
                {
                    return (through!, to);
                }
            }

            return null;
        }

        private Room? Step(Room? room, bool atSink)
        {
            switch (room?.Class)
            {
                case null:
                    onCleanSide = false;
                    through = null;
                    return null;
                case HygieneClass.Dirty or HygieneClass.Plant:
                    through = onCleanSide ? room : null;
                    washed = sinks.Contains(room.Id);
                    return null;
                case HygieneClass.Clean or HygieneClass.Cold:
                    // Unwashed hands are the finding of unwashed-entry.
                    var back = through is not null && (washed || atSink) ? room : null;
                    onCleanSide = true;
                    through = back is null ? null : through;
                    return back;
                default:
                    onCleanSide = false;
                    return through is null ? null : room;
            }
        }
    }
}
