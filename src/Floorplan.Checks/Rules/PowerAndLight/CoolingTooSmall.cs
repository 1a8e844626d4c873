using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Rooms;

namespace Floorplan.Checks.Rules.PowerAndLight;

/// <summary>The cooling unit that a cold room says against what the room is worked out to need.</summary>
internal sealed class CoolingTooSmall : Rule
{
    /// <summary>A unit that is short by less than this share is a rounding of the plan's.</summary>
    private const double Tolerance = 0.005;

    public override string Name => "cooling-too-small";

    public override RuleGroup Group => RuleGroup.PowerAndLight;

    public override string Says => "The cooling unit of a cold room carries away less heat than comes into the room on a summer day.";

    public override string Why
        => "A unit that is too small runs day and night and still lets the room get warm on the day when most product comes in.";

    public override string Mend
        => "Take a larger unit, insulate better, keep the door shut, or bring the product in colder. `floorplan size FILE --working` shows "
            + "each load.";

    public override string? Caution
        => "Refrigerants suffocate and some burn: licensed refrigeration work, and local codes prevail. A cold room opens from inside.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new(
            "loads by ASHRAE Refrigeration: sides, product, doors, people, lamps; 10 % for safety and 18 h of running from memory",
            Origin.FromMemory),
    ];

    public override string Bad => """
        plan "Small cooler"
          units metric
        shell shed 6000 x 4000 x 2600
          lining walls 50 "PIR panel", ceiling 50 "PIR panel"
        room store "Store" cold from west to east
          keep 2 C
          cooling 0.9 kW
        door d1 store to outside, south wall, 300 from west, 1000 x 2050, swings out, closes itself, opens from inside
        """;

    public override IReadOnlyList<LineChange> Mended => [new("cooling 0.9", "  cooling 6 kW")];

    public override bool AppliesTo(Plan plan) => plan.Rooms.Any(r => r.Class == HygieneClass.Cold && r.CoolingWatts is not null);

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        foreach (var load in context.Facts.ColdRooms)
        {
            var room = load.Room;
            if (room.CoolingWatts is not { } said || said >= load.Duty.Value * (1 - Tolerance))
            {
                continue;
            }

            string unit = context.Text(said, Measure.Heat);
            var most = load.Lines.MaxBy(l => l.Heat.Value)!;
            yield return CheckContext.Find(
                this, Severity.Warning, [room.Id],
                $"the cooling unit of {Named.Of(room)} carries away {unit}; the room needs {load.Duty.Text}, most of it for {most.Name} "
                    + $"({most.Heat.Text})",
                $"take a unit of {load.Duty.Text} or more, or bring the loads down: `floorplan size` lists them", room.Span,
                room.Floor.InteriorPoint.Coordinate) with
            {
                Measured = said,
                LimitValue = load.Duty.Value,
                Figures = [load.Duty, most.Heat],
            };
        }
    }
}
