using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;
using Floorplan.Model.Rooms;
using Floorplan.Model.Stations;

namespace Floorplan.Checks.Rules.Hygiene;

internal sealed class ChemicalsNearFood : Rule
{
    public override string Name => "chemicals-near-food";

    public override RuleGroup Group => RuleGroup.Hygiene;

    public override string Says
        => "Cleaning chemicals are kept in a clean or cold room, or in a dry room where something else is kept. A store keeps chemicals "
            + "when its first word or its label says so.";

    public override string Why => "A can that leaks or drips on product or its packing poisons, and nobody sees it.";

    public override string Mend
        => "Give chemicals a closed cupboard in a plant or staff room, or in the dirty room, on the floor and never over a bench.";

    public override string? Caution => "Some cleaners must never meet. Follow their safety data sheets; local codes prevail.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new(
            "Regulation (EC) 852/2004, Annex II, chapter I(10): cleaning agents are not stored where food is handled",
            Origin.FromMemory, Force.Law),
        new("Food Code 2022, 7-201.11: apart from food by distance or a wall, and not above it", Origin.FromMemory, Force.ModelCode),
    ];

    public override string Bad => """
        plan "Perch unit"
          units metric
        shell shed 8000 x 3000 x 2500
        room pack "Packing" clean from west to 6000
        room aside "Mops" plant from 6000 to east
        partitions thickness 80
        door d1 pack to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself
        door d2 pack to aside, centred, 900 x 2050, swings aside, closes itself
        drain fd1 floor in pack, 3000 from west, centred, 100
        sink e1 eyewash in pack, 400 x 400, against north wall, 4000 from west
        store foam chemicals in pack, 500 x 400 x 1200, against north wall, 1000 from west
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("store foam", "store foam chemicals in aside, 500 x 400 x 1200, against north wall, 1000 from west"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        foreach (var store in context.Plan.Stations.Where(Chemicals.AreKeptIn))
        {
            if (IsForFood(context.Plan, store))
            {
                yield return CheckContext.Find(this, Severity.Warning, [store.Id, store.Room.Id],
                    $"{Named.Of(store)} keeps chemicals in {Named.Of(store.Room)}, with food or what it is packed in",
                    $"move {store.Id} to a plant or staff room, or give it a cupboard on the dirty side", store.Span,
                    store.Bounds.Centre.Coordinate);
            }
        }
    }

    private static bool IsForFood(Plan plan, Station store) => store.Room.Class switch
    {
        HygieneClass.Clean or HygieneClass.Cold => true,
        HygieneClass.Dry => plan.Stations.Any(s => s.Room.Id == store.Room.Id && s.Role != StationRole.Sink
            && !Chemicals.AreKeptIn(s)),
        _ => false,
    };
}
