using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Measuring;
using Floorplan.Checks.Rules.PowerAndLight;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model;

namespace Floorplan.Checks.Rules.LightAndAir;

internal sealed class LightMissing : Rule
{
    public override string Name => "light-missing";

    public override RuleGroup Group => RuleGroup.PowerAndLight;

    public override string Says
        => "The plan gives light for some rooms, and none for a room where people work. A plan that says nothing of light is not looked "
            + "at.";

    public override string Why => "The electrician fits what the plan counts. A room that was forgotten gets one bulb at the door.";

    public override string Mend => "Say how much light the room is to have: `light ROOM 540 lux`.";

    public override string? Caution => ElectricWork.Caution;

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new Source("9 CFR 416.2(c), US CFR: light where food is worked on, examined and kept, where tools are washed, and in dressing "
            + "rooms and toilets; no figure", Origin.FromMemory, Force.Law).In("us").Of(PlantOf.Inspected),
        new Source("FDA Food Code 6-303.11: 50 fc (540 lux) where hands work with food or knives", Origin.FoundInPublicCopy,
            Force.ModelCode).In("us").Of(PlantOf.Retail),
        new Source("Regulation (EC) 852/2004, Annex II, chapter I(7): light enough, from the sky or lamps", Origin.FromMemory, Force.Law)
            .In("eu"),
    ];

    public override string Bad => """
        plan "Roach unit"
          units metric
        shell shed 8000 x 3000 x 2500
        room gut  "Gutting" dirty from west to 4000
        room pack "Packing" clean from 4000 to east
        partitions thickness 80
        door d1 gut to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself
        door d2 pack to outside, south wall, 500 from east, 900 x 2050, swings out, closes itself
        drain fd1 floor in gut, 2000 from west, centred, 100
        drain fd2 floor in pack, 2000 from west, centred, 100
        sink s1 hand in gut, 400 x 350, against south wall, 2500 from west
        sink s2 hand in pack, 400 x 350, against south wall, 1000 from west
        station bench "Gutting bench" in gut
          size 1500 x 600 x 900
          place against north wall, 1000 from west
          worker south
        station table "Packing table" in pack
          size 1500 x 600 x 900
          place against north wall, 1000 from west
          worker south
        light pack 540 lux
        """;

    public override IReadOnlyList<LineChange> Mended => [new("light pack", "light pack 540 lux, gut 220 lux")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var lit = LitRooms.Of(context.Plan);
        if (lit.Count == 0)
        {
            yield break;
        }

        var worked = context.Plan.Stations.Where(s => s.Workers.Count > 0).Select(s => s.Room.Id).ToHashSet(StringComparer.Ordinal);
        foreach (var room in context.Plan.Rooms.Where(r => worked.Contains(r.Id) && !lit.Contains(r.Id)))
        {
            string line = $"light {room.Id} {context.Light(Lux(context.Plan))}";
            yield return CheckContext.Find(
                this, Severity.Warning, [room.Id], $"{Named.Of(room)} has workers and no light, though other rooms have",
                $"add a line such as: {line}", room.Span, room.Floor.InteriorPoint.Coordinate) with
            { Limit = $"light where people work ({context.SourceOf(this).Text})", NewLine = line };
        }
    }

    /// <summary>What the mend proposes: 50 fc, or what that is in whole lux.</summary>
    private static double Lux(Plan plan) => plan.Units == UnitSystem.Metric ? 540 : 50 / InchPound.SquareMetresPerSquareFoot;
}
