using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;
using Floorplan.Model.Rooms;
using Floorplan.Model.Stations;

namespace Floorplan.Checks.Rules.WaterAndDrain;

/// <summary>Rooms where people handle open product need a hand sink in the room, or in the lobby that they come through.</summary>
internal sealed class HandSinkMissing : Rule
{
    public override string Name => "hand-sink-missing";

    public override RuleGroup Group => RuleGroup.WaterAndDrain;

    public override string Says => "People work with open product in a room that has no hand sink, nor has the lobby next to it.";

    public override string Why => "Without a sink where the hands are, gloves and knives carry everything on to the next carcass.";

    public override string Mend => "Add a hand sink in the room, or in a lobby that opens into it.";

    public override IReadOnlyList<Source> Sources => Published.HandSinks;

    public override string Bad => """
        plan "Gutting box"
          units metric
          code us
        shell container 20 ft high-cube
          lining walls 50, ceiling 50, floor 110
          doors west
        room gut "Gutting" dirty from west to east
        door d1 gut to outside, south wall, 400 from west, 900 x 2050, swings out, closes itself
        drain fd1 floor in gut, 3500 from west, centred, 100
        station bench "Gutting bench" in gut
          size 1400 x 600 x 900
          place against north wall, 600 from west
          worker south
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        LineChange.After("worker south", "sink s1 hand in gut, 400 x 350, against south wall, 2500 from west"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var plan = context.Plan;
        var withSink = plan.Stations.Where(s => s.IsHandSink).Select(s => s.Room.Id).ToHashSet();
        var lobbies = Lobbies(plan);
        var worked = plan.Stations.Where(s => s.Role == StationRole.Station && s.Workers.Count > 0).Select(s => s.Room.Id).ToHashSet();
        foreach (var room in plan.Rooms.Where(r => r.Class is HygieneClass.Dirty or HygieneClass.Clean && worked.Contains(r.Id)))
        {
            if (!withSink.Contains(room.Id) && !lobbies[room.Id].Any(withSink.Contains))
            {
                yield return CheckContext.Find(
                    this, Severity.Warning, [room.Id], $"{Named.Of(room)} has workers and no hand sink, nor has a lobby next to it",
                    $"add one, such as: sink s-{room.Id} hand in {room.Id}, {Suggest.HandSink(context.Plan.Units)}, against … wall, … "
                        + "from …", room.Span, room.Floor.InteriorPoint.Coordinate)
                    with
                { Limit = $"a hand sink where food is handled ({context.SourceOf(this).Text})" };
            }
        }
    }

    /// <summary>By room id the ids of the staff rooms that open into it.</summary>
    private static ILookup<string, string> Lobbies(Plan plan) => plan.Openings
        .Where(o => o.IsWalkable && o.RoomA is not null && o.RoomB is not null)
        .SelectMany(o => new[] { (Room: o.RoomA!, Next: o.RoomB!), (Room: o.RoomB!, Next: o.RoomA!) })
        .Where(p => p.Next.Class == HygieneClass.Staff)
        .ToLookup(p => p.Room.Id, p => p.Next.Id);
}
