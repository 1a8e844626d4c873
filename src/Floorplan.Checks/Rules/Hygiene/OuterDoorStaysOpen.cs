using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;

namespace Floorplan.Checks.Rules.Hygiene;

/// <summary>Doors between the open air and rooms that product is in. The shell's own cargo doors stay shut while work goes on.</summary>
internal sealed class OuterDoorStaysOpen : Rule
{
    public override string Name => "outer-door-stays-open";

    public override RuleGroup Group => RuleGroup.Hygiene;

    public override string Says => "A door to outside of a room with product does not close itself. Cargo doors and roll-up "
        + "doors are left out.";

    public override string Why
        => "A door that nobody pulls shut lets in flies, dust and mice, and hands that carry crates pull no door shut.";

    public override string Mend
        => "Fit a spring or a closer and write `closes itself`; the gap round the shut leaf is at most 1/4 in (6 mm).";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new Source(
            "Food Code 2022, 6-202.15(A), as adopted in Minnesota, Wisconsin and the District of Columbia: outer openings kept from "
                + "insects "
                + "and rodents by solid, self-closing, tight doors", Origin.FoundInPublicCopy, Force.ModelCode).In("us").Of(PlantOf.Retail),
        new Source("9 CFR 590.500(e), US CFR: outer doors of edible rooms solid and self-closing", Origin.FoundInSecondaryCopy, Force.Law)
            .In("us").For(Trade.Eggs),
        new Source("ARS 3-2050, Arizona: outer doors and windows of exempt processors screened", Origin.FoundInPublicCopy, Force.Law)
            .In("us-az").For(Trade.RedMeat).Of(PlantOf.Exempt),
        new Source("Pasteurized Milk Ordinance, item 3p: outer doors screened or self-closing", Origin.FromMemory, Force.ModelCode)
            .In("us").Of(PlantOf.Milk),
        new Source("Red Meat Regulations 2004, reg 11, South Africa: doors that keep vermin out", Origin.FoundInPublicCopy, Force.Law)
            .In("za").For(Trade.RedMeat),
        new("a door that hands full of crates do not pull shut; common practice", Origin.CommonPractice),
    ];

    public override string Bad => """
        plan "Pack room"
          units metric
          code us
          plant retail
        shell shed 6000 x 3000 x 2500
        room pack "Packing" clean from west to east
        door d1 pack to outside, south wall, 500 from west, 900 x 2050, swings out, opens from inside
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("door d1", "door d1 pack to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself, opens from inside"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var source = context.SourceOf(this);
        foreach (var door in context.Plan.Openings.Where(o => o is { Kind: OpeningKind.Door, InShell: true, ClosesItself: false }
            && o.Swing?.Kind != SwingKind.RollUp))
        {
            if (new[] { door.RoomA, door.RoomB }.OfType<Room>()
                .FirstOrDefault(r => r.Class is HygieneClass.Dirty or HygieneClass.Clean or HygieneClass.Cold) is { } room)
            {
                yield return CheckContext.Find(
                    this, source.Force == Force.Practice ? Severity.Note : Severity.Warning, [door.Id, room.Id],
                            $"{Named.Of(door)} of {Named.Of(room)} leads outside and does not close itself",
                    $"fit a closer and write `closes itself` on {door.Id}", door.Span, door.Centre.Coordinate) with
                { Limit = $"self-closing doors to outside ({source.Text})", NewWords = "closes itself" };
            }
        }
    }
}
