using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;
using Floorplan.Model.Rooms;
using Floorplan.Sizing.Rooms;

namespace Floorplan.Checks.Rules.RoomAndPlace;

/// <summary>The room that each of those who work in a room has, height included, as if the room were empty.</summary>
internal sealed class RoomTooSmall : Rule
{
    private const double Least = 11;

    /// <summary>A room that is short by less than this share is a rounding of the plan's.</summary>
    private const double Tolerance = 1e-6;

    public override string Name => "room-too-small";

    public override RuleGroup Group => RuleGroup.RoomAndPlace;

    public override string Says
        => "A room is small for all who work in it at once: those whom `day` puts there, or else one person for each worker's place.";

    public override string Why
        => "Where too many share a small room they are in each other's way with knives and hot water, and warmth and breath stay in it. "
            + "Things that stand in the room make it smaller still.";

    public override string Mend
        => "Have fewer people in it at once, make it larger, or spread the work over two rooms. Where fewer work than there are places, "
            + "say so: `day` with `crew kill 2`.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new Source("Workplace health, safety and welfare, UK approved code of practice L24, regulation 10: 11 m³ for each person in "
            + "the empty "
            + "room, heights over 3 m not counted; cabs and the like are left out", Origin.FoundInPublicCopy, Force.Guidance)
            .In("uk"),
        new Source("9 CFR 416.2(b)(1), US CFR: rooms large enough, without a figure", Origin.FromMemory, Force.Law)
            .In("us").Of(PlantOf.Inspected),
    ];

    public override IReadOnlyList<RuleLimit> Limits
        => [new("room for each person", Least, LimitUnit.CubicMetres, Sources[0], Severity.Note)];

    public override string Bad => """
        plan "Wrapping room"
          units metric
          country uk
        shell shed 4000 x 3000 x 2600
        room wrap "Wrapping" dry from west to east
        door d1 wrap to outside, south wall, 300 from west, 1000 x 2050, swings out, closes itself
        day
          crew wrap 6
          elsewhere 2 toilets, changing room
        """;

    public override IReadOnlyList<LineChange> Mended => [new("crew wrap", "  crew wrap 2")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        if (context.Limit(this) is not { } limit)
        {
            yield break;
        }

        foreach (var room in context.Plan.Rooms)
        {
            int people = (int)context.Facts.Crew.Working[room.Id].Value;
            var volume = context.Facts.RoomSizes[room.Id].Breathed;
            if (people > 0 && volume.Value / people < limit.Value * (1 - Tolerance))
            {
                yield return Report(context, room, people, volume, limit);
            }
        }
    }

    private Finding Report(CheckContext context, Room room, int people, Figure volume, AppliedLimit limit)
    {
        string who = people == 1 ? "the one person who works" : FormattableString.Invariant($"each of {people} people who work");
        int fit = (int)(volume.Value / limit.Value);
        string fewer = fit > 0 ? FormattableString.Invariant($"; {fit} at once {(fit == 1 ? "has" : "have")} enough") : "";
        return CheckContext.Find(
            this, limit, volume.Value / people, [room.Id],
            $"{Named.Of(room)} has {context.Volume(volume.Value / people)} for {who} there",
            $"make it {context.Volume(limit.Value * people)} in all, it has "
                + volume.Text
                + (room.CeilingHeight.Millimetres > RoomSize.HighestCounted ? $" below {context.Text(RoomSize.HighestCounted)}" : "")
                + fewer,
            room.Span, room.Floor.InteriorPoint.Coordinate)
            with
        { Figures = [volume, context.Facts.Crew.Working[room.Id]] };
    }
}
