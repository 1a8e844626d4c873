using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Rooms;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Checks.Rules.Hygiene;

internal sealed class WasteThroughClean : Rule
{
    public override string Name => "waste-through-clean";

    public override RuleGroup Group => RuleGroup.Hygiene;

    public override string Says => "Waste on its real way enters a clean or cold room, or a room to change in, other than "
        + "where it was made.";

    public override string Why
        => "Offal drips, and bins are never clean underneath. What the dirty side has washed off the product is wheeled past the product "
            + "again.";

    public override string Mend => "Give the room where the waste is made its own door or chute to outside.";

    public override IReadOnlyList<Source> Sources { get; } =
        [HygieneSources.EdibleApart, HygieneSources.NoCrossFlow, HygieneSources.OneWayFlow];

    public override string Bad => """
        plan "Rabbit unit"
          units metric
        shell shed 9000 x 3000 x 2500
        room skin "Skinning" dirty from west to 4000
        room pack "Packing" clean from 4000 to east
        partitions thickness 80
        door d1 skin to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself
        door d2 skin to pack, 300 from south, 900 x 2050, swings pack, closes itself
        door d3 pack to outside, south wall, 500 from east, 900 x 2050, swings out, closes itself
        drain fd1 floor in skin, 2000 from west, centred, 100
        bin skins 90 L in skin, 500 x 500, against north wall, 2000 from west
        flow waste "Skins"
          skins -> d2 -> d3 -> outside   by trolley 500 wide
        """;

    public override IReadOnlyList<LineChange> Mended => [new("skins ->", "  skins -> d1 -> outside   by trolley 500 wide")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        foreach (var journey in Journey.Of(context.Space, Stream.Waste).Where(j => !j.IsPiped))
        {
            var passed = journey.Rooms.Append(journey.ToRoom)
                .OfType<Room>()
                .Where(r => r.Class is HygieneClass.Clean or HygieneClass.Cold or HygieneClass.Staff && r.Id != journey.FromRoom?.Id)
                .DistinctBy(r => r.Id)
                .ToList();
            if (passed.Count > 0)
            {
                string names = Named.List(passed.Select(Named.Of));
                var inside = journey.FirstStretchIn(passed[0]);
                yield return CheckContext.Find(this, Severity.Warning, [.. journey.Things, .. passed.Select(r => r.Id)],
                    $"waste from {Named.Of(journey.From)} to {Named.Of(journey.To)} goes through {names}",
                    $"lead it from {Named.Of(journey.FromRoom)} straight to outside, by a door, hatch or chute of its own",
                    journey.Legs[0].Leg.Span, inside?.InteriorPoint.Coordinate ?? passed[0].Floor.InteriorPoint.Coordinate);
            }
        }
    }
}
