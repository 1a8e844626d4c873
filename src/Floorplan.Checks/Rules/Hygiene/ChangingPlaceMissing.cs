using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;
using Floorplan.Model.Rooms;
using Floorplan.Sizing.Staffing;

namespace Floorplan.Checks.Rules.Hygiene;

internal sealed class ChangingPlaceMissing : Rule
{
    public override string Name => "changing-place-missing";

    public override RuleGroup Group => RuleGroup.Hygiene;

    public override string Says
        => "A crew works with food, and the plan neither has a staff room to change in nor says that there is one elsewhere on the site. "
            + "A plan without a crew is not looked at.";

    public override string Why => "Street shoes and coats that hang beside the bench bring in what the wash-down took out.";

    public override string Mend
        => "Carve a small room of class `staff` at the clean entrance, or say under `day`: `elsewhere changing room`.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        HygieneSources.Mobile,
        new Source("9 CFR 416.2(h), US CFR: dressing rooms apart from product rooms", Origin.FromMemory, Force.Law)
            .In("us").Of(PlantOf.Inspected),
    ];

    public override string Bad => """
        plan "Char unit"
          units metric
        shell shed 6000 x 3000 x 2500
        room gut "Gutting" dirty from west to east
          finish floor "resin, coved", walls "panel", ceiling "panel"
        door d1 gut to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself
        day
          crew gut 2
          elsewhere 1 toilet
        """;

    public override IReadOnlyList<LineChange> Mended => [new("elsewhere 1", "  elsewhere 1 toilet, changing room")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        if (!Holds(context.Plan))
        {
            yield break;
        }

        var rooms = FoodRooms(context.Plan);
        yield return CheckContext.Find(this, Severity.Warning, [.. rooms.Select(r => r.Id)],
            $"nobody who works in {Named.List(rooms.Select(Named.Of))} has a room to change in",
            "carve a room of class `staff` at the entrance, or say under `day`: elsewhere changing room", context.Plan.Day!.Span,
            rooms[0].Floor.InteriorPoint.Coordinate) with
        { Limit = $"a place to change ({context.SourceOf(this).Text})" };
    }

    /// <summary>Whether a plan has this fault.</summary>
    public static bool Holds(Plan plan)
        => plan.Day is { ChangingElsewhere: false } && !plan.Rooms.Any(r => r.Class == HygieneClass.Staff) && FoodRooms(plan).Count > 0;

    private static List<Room> FoodRooms(Plan plan)
    {
        var places = Crew.PlacesOf(plan).ToHashSet(StringComparer.Ordinal);
        var rooms = plan.Stations.Where(s => places.Contains(s.Id)).Select(s => s.Room.Id).Concat(places).ToHashSet(StringComparer.Ordinal);
        return [.. plan.Rooms.Where(r => r.Class is HygieneClass.Dirty or HygieneClass.Clean or HygieneClass.Cold && rooms.Contains(r.Id))];
    }
}
