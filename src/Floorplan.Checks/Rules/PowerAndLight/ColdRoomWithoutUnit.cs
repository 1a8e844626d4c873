using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;
using Floorplan.Model.Rooms;
using Floorplan.Model.Stations;

namespace Floorplan.Checks.Rules.PowerAndLight;

internal sealed class ColdRoomWithoutUnit : Rule
{
    private static readonly string[] Units = ["cooling", "cooler", "evaporator", "refriger", "freezer", "condens", "air condition", "ice"];

    public override string Name => "cold-room-without-unit";

    public override RuleGroup Group => RuleGroup.PowerAndLight;

    public override string Says
        => "A cold room says what it keeps, and the plan names nothing that cools it: neither `cooling` with the unit's power, nor a thing "
            + "in it whose label says so, such as a cooling unit or ice.";

    public override string Why
        => "The unit needs a place, a drain for its melt water, a circuit and a hole in the wall. What is not on the plan is found missing "
            + "when the lining is up.";

    public override string Mend => "Write `cooling` with what the unit carries away, as its maker says; `floorplan size` says "
        + "how much the room needs.";

    public override IReadOnlyList<Source> Sources { get; } = [new("What keeps cold has something that cools it", Origin.OwnAssumption)];

    public override string Bad => """
        plan "Small cooler"
          units metric
        shell shed 6000 x 4000 x 2600
          lining walls 80 "PIR panel", ceiling 80 "PIR panel"
        room store "Store" cold from west to east
          keep 2 C
        door d1 store to outside, south wall, 300 from west, 1000 x 2050, swings out, closes itself, opens from inside
        """;

    public override IReadOnlyList<LineChange> Mended => [LineChange.After("keep 2", "  cooling 30 kW")];

    public override bool AppliesTo(Plan plan) => plan.Rooms.Any(r => r is { Class: HygieneClass.Cold, KeepCelsius: not null });

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        foreach (var room in context.Plan.Rooms.Where(r => r is { Class: HygieneClass.Cold, KeepCelsius: not null, CoolingWatts: null }))
        {
            if (!context.Plan.Stations.Any(s => s.Room.Id == room.Id && Cools(s)))
            {
                yield return CheckContext.Find(this, Severity.Note, [room.Id],
                    $"{Named.Of(room)} is to keep {context.Temperature(room.KeepCelsius!.Value)}, and the plan names nothing that cools it",
                    "write `cooling` with the power of its unit below it; `floorplan size` says what it needs", room.Span,
                    room.Floor.InteriorPoint.Coordinate);
            }
        }
    }

    private static bool Cools(Station station) => Units.Any(u => station.Label.Contains(u, StringComparison.OrdinalIgnoreCase))
        || station.Needs.Any(n => n.Kind == NeedKind.Ice);
}
