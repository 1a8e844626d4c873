using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;

namespace Floorplan.Checks.Rules.Hygiene;

/// <summary>Looks at every opening between a toilet and another room.</summary>
internal sealed class ToiletOpensOnFood : Rule
{
    public override string Name => "toilet-opens-on-food";

    public override RuleGroup Group => RuleGroup.Hygiene;

    public override string Says => "A toilet opens directly into a room where product is handled or kept.";

    public override string Why
        => "What the flush throws up, and what hands carry before they are washed, must not reach product. A lobby with a wash basin "
            + "between stops both.";

    public override string Mend => "Put a lobby or a changing room with a wash basin between, or let the toilet open to the outside.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new Source(
            "Regulation (EC) 852/2004, Annex II, chapter I(3): lavatories do not open directly into rooms where food is handled",
            Origin.FoundInSecondaryCopy, Force.Law).In("eu"),
        new Source("9 CFR 416.2(h)(1), US CFR: toilets apart from rooms where product is handled or kept", Origin.FoundInSecondaryCopy,
            Force.Law).In("us").Of(PlantOf.Inspected),
        new Source("Red Meat Regulations 2004, reg 13, South Africa: a toilet room with its own door, and no way into meat rooms",
            Origin.FoundInPublicCopy, Force.Law).In("za").For(Trade.RedMeat),
    ];

    public override string Bad => """
        plan "Trout unit"
          units metric
        shell shed 7000 x 3000 x 2500
        room fillet "Filleting" clean from west to 5000
        room wc "Toilet" toilet from 5000 to east
        partitions thickness 80
        door d1 fillet to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself
        door d2 fillet to wc, 300 from south, 800 x 2050, swings fillet, closes itself
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("door d2", "door d2 wc to outside, east wall, 300 from south, 800 x 2050, swings out, closes itself"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        foreach (var opening in context.Plan.Openings.Where(o => o.Kind != OpeningKind.Vent))
        {
            if (opening is { RoomA: { } a, RoomB: { } b } && Pair(a, b) is { } found)
            {
                yield return CheckContext.Find(
                    this, Severity.Warning, [opening.Id, found.Toilet.Id, found.Food.Id],
                    $"{Named.Of(found.Toilet)} opens through {Named.Of(opening)} into {Named.Of(found.Food)}, where product is handled "
                        + "or kept",
                    $"put a lobby with a wash basin between, or move {Named.Of(opening)} to a wall of another room", opening.Span,
                    opening.Centre.Coordinate);
            }
        }
    }

    private static (Room Toilet, Room Food)? Pair(Room a, Room b) =>
        a.Class == HygieneClass.Toilet && IsFood(b) ? (a, b) : b.Class == HygieneClass.Toilet && IsFood(a) ? (b, a) : null;

    private static bool IsFood(Room room)
        => room.Class is HygieneClass.Dirty or HygieneClass.Clean or HygieneClass.Cold or HygieneClass.Dry;
}
