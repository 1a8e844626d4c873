using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Graphs;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Checks.Rules.Hygiene;

internal sealed class BinBehindWall : Rule
{
    public override string Name => "bin-behind-wall";

    public override RuleGroup Group => RuleGroup.Hygiene;

    public override string Says
        => "A station throws its waste into a bin of another room (`waste … to`), and no `flow waste` says how it gets there.";

    public override string Why
        => "Nobody throws through a wall. Waste then collects under the bench, or somebody walks with it through the other room all day.";

    public override string Mend
        => "Put a bin beside the station, or cut a chute through the wall and write it: `bench -> c1 -> bin   by chute`.";

    public override IReadOnlyList<Source> Sources { get; } =
        [HygieneSources.NoCrossFlow, new("A hand does not reach through a wall", Origin.OwnAssumption)];

    public override string Bad => """
        plan "Tench unit"
          units metric
        shell shed 8000 x 3000 x 2500
        room gut  "Gutting" dirty from west to 4000
        room yard "Bins" plant from 4000 to east
        partitions thickness 80
        door d1 gut to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself
        door d2 yard to outside, south wall, 500 from east, 900 x 2050, swings out, closes itself
        window c1 gut to yard, 300 from north, 400 x 350, sill 500
        drain fd1 floor in gut, 2000 from west, centred, 100
        sink s1 hand in gut, 400 x 350, against south wall, 2500 from west
        station bench "Gutting bench" in gut
          size 1200 x 600 x 900
          place against north wall, 200 from east
          worker south
          waste 0.2 kg each to offal
        bin offal 60 L in yard, 450 x 450 x 800, against north wall, 50 from west
        flow product
          outside -> d1 -> bench   by hand
        flow waste
          offal -> d2 -> outside   by trolley 500 wide, after work
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("window c1", "chute c1 gut to yard, 300 from north, 400 x 350, sill 500"),
        LineChange.After("flow waste", "  bench -> c1 -> offal   by chute"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var plan = context.Plan;
        var rooms = plan.Stations.DistinctBy(s => s.Id).ToDictionary(s => s.Id, s => s.Room, StringComparer.Ordinal);
        var drawn = new WayGraph([], plan.Flows.Where(f => f.Stream == Stream.Waste).SelectMany(f => f.Legs)
            .Select(l => new Link(l.From.Name, l.To.Name)));
        foreach (var bins in plan.Stations
            .SelectMany(s => s.Wastes.Where(w => w.BinId is not null).Select(w => (Station: s, Waste: w)))
            .Where(t => rooms.TryGetValue(t.Waste.BinId!, out var room) && room.Id != t.Station.Room.Id)
            .GroupBy(t => t.Waste.BinId!))
        {
            var led = drawn.LeadingTo([bins.Key]);
            foreach (var (station, waste) in bins.Where(t => !led.Contains(t.Station.Id)))
            {
                yield return CheckContext.Find(this, Severity.Warning, [station.Id, bins.Key],
                    $"{Named.Of(station)} in {Named.Of(station.Room)} throws its waste into {bins.Key}, which stands behind the wall in "
                        + Named.Of(rooms[bins.Key]),
                    $"put a bin in {station.Room.Id}, or write how the waste gets there, such as: {station.Id} -> a chute -> {bins.Key} "
                        + "by chute",
                    waste.Span, station.Bounds.Centre.Coordinate);
            }
        }
    }
}
