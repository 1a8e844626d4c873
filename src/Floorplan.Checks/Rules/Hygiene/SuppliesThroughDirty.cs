using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Flows;
using Floorplan.Model.Rooms;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Checks.Rules.Hygiene;

internal sealed class SuppliesThroughDirty : Rule
{
    public override string Name => "supplies-through-dirty";

    public override RuleGroup Group => RuleGroup.Hygiene;

    public override string Says
        => "In working time supplies for a clean or cold room (`flow supplies`) are carried through a dirty room, a plant room or a "
            + "toilet, or kept there. Before work and after it the room is washed down, and it does not count.";

    public override string Why => "Cartons and film cannot be washed. What splashes on them in the dirty room is packed with the product.";

    public override string Mend => "Bring them in by the clean side's own door, or `before work`, or hand them in from a dry store.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        HygieneSources.OneWayFlow, HygieneSources.NoCrossFlow,
        new(
            "Reg (EC) 852/2004 Annex II ch.X: wrapping material is kept so that it is not exposed to contamination", Origin.FromMemory,
            Force.Law),
    ];

    public override string Bad => """
        plan "Tench unit"
          units metric
        shell shed 9000 x 3000 x 2500
        room gut "Gutting" dirty from west to 4000
        room pack "Packing" clean from 4000 to east
        partitions thickness 80
        door d1 gut to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself
        door d2 pack to outside, south wall, 500 from east, 900 x 2050, swings out, closes itself
        door d3 gut to pack, 300 from south, 900 x 2050, swings pack, closes itself
        drain fd1 floor in pack, 2000 from west, centred, 100
        sink s1 hand in pack, 400 x 350, against south wall, 2000 from west
        station table "Packing table" in pack
          size 1500 x 600 x 900
          place against north wall, 1500 from west
          worker south
        flow supplies "Cartons"
          outside -> d1 -> d3 -> table   by hand
        """;

    public override IReadOnlyList<LineChange> Mended => [new("outside ->", "  outside -> d2 -> table         by hand")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        foreach (var journey in Journey.Of(context.Space, Stream.Supplies)
            .Where(j => j.Legs[0].Leg.Period == Period.During && j.Legs.All(IsCarried)))
        {
            var passed = journey.Rooms.OfType<Room>().Where(r => HygieneRank.Of(r) == 0).DistinctBy(r => r.Id).ToList();
            if (passed.Count > 0 && journey.ToRoom is { } to && ReturnWays.IsClean(to))
            {
                string what = journey.Flow.Label.Length == 0 ? "supplies" : journey.Flow.Label;
                var inside = journey.FirstStretchIn(passed[0]);
                yield return CheckContext.Find(this, Severity.Warning, [.. journey.Things, .. passed.Select(r => r.Id)],
                    $"{what} for {Named.Of(journey.To)} in {Named.Of(to)} come through {Named.List(passed.Select(Named.Of))} in working "
                        + "time",
                    $"bring them in by a door of {Named.Of(to)} itself, or `before work`", journey.Legs[0].Leg.Span,
                    inside?.InteriorPoint.Coordinate ?? passed[0].Floor.InteriorPoint.Coordinate);
            }
        }
    }

    /// <summary>Salt water and gas come in closed pipes.</summary>
    private static bool IsCarried(Model.Space.LegRoute leg) => leg.Leg.Carriage.Kind != CarriageKind.Pump;
}
