using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Checks.Rules.Hygiene;

internal sealed class ProductThroughDirtier : Rule
{
    public override string Name => "product-through-dirtier";

    public override RuleGroup Group => RuleGroup.Hygiene;

    public override string Says
        => "On its real way between two stops product passes a room dirtier than both, or open air between two rooms. Product on its way "
            + "out counts too.";

    public override string Why
        => "Nobody draws clean product through the killing room, but when the only door of the pack room opens there, that is where the "
            + "crates go.";

    public override string Mend => "Cut a hatch or door that joins the two rooms directly, or give the clean side its own door to outside.";

    public override IReadOnlyList<Source> Sources { get; } = [HygieneSources.OneWayFlow, HygieneSources.NoCrossFlow, HygieneSources.Ranks];

    public override string Bad => """
        plan "Duck unit"
          units metric
        shell shed 9000 x 3000 x 2500
        room kill "Killing" dirty from west to 4000
        room pack "Packing" clean from 4000 to east
        partitions thickness 80
        door d1 kill to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself
        door d2 kill to pack, 300 from south, 900 x 2050, swings pack, closes itself
        drain fd1 floor in kill, 2000 from west, centred, 100
        drain fd2 floor in pack, 2000 from west, centred, 100
        sink s1 hand in kill, 400 x 350, against south wall, 1800 from west
        sink s2 hand in pack, 400 x 350, against south wall, 2000 from west
        station cone "Killing cones" in kill
          size 1200 x 500 x 1500
          place against north wall, 500 from west
          worker south
        station table "Packing table" in pack
          size 1500 x 600 x 900
          place against north wall, 1500 from west
          worker south
        flow product
          outside -> d1 -> cone -> d2 -> table   by hand
          table -> d2 -> d1 -> outside           by hand
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        LineChange.After("door d2", "door d3 pack to outside, south wall, 500 from east, 900 x 2050, swings out, closes itself"),
        new("table ->", "  table -> d3 -> outside                 by hand"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        foreach (var journey in Journey.Of(context.Space, Stream.Product).Where(j => !j.IsPiped && j.Rooms.Count > 2))
        {
            // Product that leaves is as clean as where it comes from; product that comes in is as dirty as outside.
            if (Cleanness(journey) is not { } clean)
            {
                continue;
            }

            var passed = journey.Rooms.Skip(1).Take(journey.Rooms.Count - 2).Where(r => ProductGoesBack.IsDirtier(r, clean)).ToList();
            if (passed.Count > 0)
            {
                string[] names = [.. passed.Select(Named.Of).Distinct()];
                yield return CheckContext.Find(
                    this, Severity.Warning, [.. journey.Things, .. passed.OfType<Room>().Select(r => r.Id).Distinct()],
                    $"product on its way from {Named.Of(journey.From)} to {Named.Of(journey.To)} passes {Named.List(names)}, dirtier "
                        + "than where it comes from and goes to",
                    journey.ToRoom is null
                        ? $"give {Named.Of(clean)} its own door to outside"
                        : $"join {Named.Of(journey.FromRoom)} and {Named.Of(journey.ToRoom)} by a door or hatch that avoids "
                            + $"{Named.List(names)}",
                    journey.Legs[0].Leg.Span, InPassed(journey, passed[0]));
            }
        }
    }

    private static Room? Cleanness(Journey journey) => (journey.FromRoom, journey.ToRoom) switch
    {
        (null, _) => null,
        ({ } from, null) => from,
        ({ } from, { } to) => HygieneRank.Of(from) <= HygieneRank.Of(to) ? from : to,
    };

    private static NetTopologySuite.Geometries.Coordinate? InPassed(Journey journey, Room? passed)
    {
        var routes = journey.Legs.Select(l => l.Route).Where(r => r is not null).ToList();
        var inside = passed is null ? null : routes.Select(r => Overlays.Stretches(r!.Path, passed.Floor)).FirstOrDefault(s => !s.IsEmpty);
        return inside?.InteriorPoint.Coordinate ?? routes.FirstOrDefault()?.Path.EndPoint.Coordinate;
    }
}
