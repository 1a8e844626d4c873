using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Rules.PowerAndLight;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Rooms;
using Floorplan.Sizing.LightAndAir;

namespace Floorplan.Checks.Rules.LightAndAir;

/// <summary>
/// The air that fans bring into a room or draw out of it, against the room's volume; for a toilet against what one draws.
/// </summary>
internal sealed class TooLittleAir : Rule
{
    private const string Changes = "air changes an hour";
    private const string Toilet = "air drawn from a toilet";

    /// <summary>50 cfm, in m3/s.</summary>
    private const double ToiletExhaust = 50 * InchPound.CubicMetresPerSecondOfCubicFootPerMinute;

    private const double SecondsPerHour = 3600;

    /// <summary>A figure that is short by less than this share is a rounding of the plan's.</summary>
    private const double Tolerance = 1e-6;

    public override string Name => "too-little-air";

    public override RuleGroup Group => RuleGroup.PowerAndLight;

    public override string Says => "The fans of a room change its air too seldom.";

    public override string Why
        => "Steam that stays wets the ceiling and drips on the product; in a steel box it does so within minutes. Rooms with scalders "
            + "and cookers want much more than the least.";

    public override string Mend => "Take a larger fan, or a second one, and let as much air in as is drawn out.";

    public override string? Caution => ElectricWork.Caution;

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new Source(
            "Malaysian code of veterinary practice for poultry plants, 3.11: at least 4 air changes an hour by fan",
            Origin.FoundInPublicCopy, Force.Guidance).In("my").For(Trade.Poultry),
        new Source("ASHRAE 62.1, table of exhaust rates: 50 cfm for each toilet", Origin.FoundInSecondaryCopy, Force.ModelCode).In("us"),
        new("process rooms 10 to 20, scalding and plucking 20 to 30 air changes an hour; common practice", Origin.CommonPractice),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(Changes, 4, LimitUnit.AirChanges, Sources[0], Severity.Note) { Quoted = true },
        new(Toilet, ToiletExhaust, LimitUnit.AirFlow, Sources[1], Severity.Warning),
    ];

    public override string Bad => """
        plan "Steam room"
          units metric
          country my
          trade poultry
        shell shed 6000 x 4000 x 2600
        room scald "Scalding" dirty from west to east
        door d1 scald to outside, south wall, 300 from west, 1000 x 2050, swings out, closes itself
        air exhaust scald 60 m3/h
        """;

    public override IReadOnlyList<LineChange> Mended => [new("air exhaust", "air exhaust scald 600 m3/h")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        foreach (var air in context.Facts.Air.Values)
        {
            var finding = air.Room.Class switch
            {
                HygieneClass.Toilet => OfToilet(context, air),

                // Cold stores are closed on purpose, and what a plant room wants depends on its machines.
                HygieneClass.Cold or HygieneClass.Plant => null,
                _ => OfRoom(context, air),
            };
            if (finding is not null)
            {
                yield return finding;
            }
        }
    }

    private Finding? OfRoom(CheckContext context, RoomAir air)
    {
        if (air is not { Changes: { } changes, SaidAt: { } span }
            || context.Limit(this, Changes) is not { } limit
            || changes.Value * SecondsPerHour >= limit.Value * (1 - Tolerance))
        {
            return null;
        }

        double flow = changes.Value * air.Volume.Value;
        return CheckContext.Find(
            this, limit, changes.Value * SecondsPerHour, [air.Room.Id],
            $"the air of {Named.Of(air.Room)} has {changes.Text}: {context.Air(flow)} for a room of {air.Volume.Text}",
            $"move {context.Air(limit.Value * air.Volume.Value / SecondsPerHour)} or more", span,
            air.Room.Floor.InteriorPoint.Coordinate) with
        { Figures = [changes, air.Volume, .. new[] { air.In, air.Out }.OfType<Figure>()] };
    }

    private Finding? OfToilet(CheckContext context, RoomAir air) =>
        air is { Out: { Value: > 0 } drawn, SaidAt: { } span }
            && context.Limit(this, Toilet) is { } limit
            && drawn.Value < limit.Value * (1 - Tolerance)
            ? CheckContext.Find(
                this, limit, drawn, [air.Room.Id], $"{drawn.Text} of air are drawn from {Named.Of(air.Room)}",
                $"draw {context.Air(limit.Value)} or more, straight to outside", span, air.Room.Floor.InteriorPoint.Coordinate)
            : null;
}
