using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Services;

namespace Floorplan.Checks.Rules.WaterAndDrain;

/// <summary>Rooms that are washed down and have something standing in them; an empty room is not laid out yet.</summary>
internal sealed class RoomWithoutDrain : Rule
{
    public override string Name => "room-without-drain";

    public override RuleGroup Group => RuleGroup.WaterAndDrain;

    public override string Says => "A room that is washed down has no floor drain.";

    public override string Why
        => "Wash water without a drain is pushed with a broom, out of the door or into the next room, and takes the dirt along.";

    public override string Mend => "Add a floor drain and falls to it, or say `kept dry` in the room when it is never washed with water.";

    public override IReadOnlyList<Source> Sources => Published.FloorDrains;

    public override IReadOnlyList<Cause> FollowsFrom => [.. Cause.AtSameThings("drain-too-far")];

    public override string Bad
        => WetBox.With("No drain", "water w1 cold hot in rinse, north wall, 1200 from west, height 1200", needs: "cold 8 L/min");

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("plan \"No", "plan \"A drain\""),
        LineChange.After("water w1", "drain fd1 floor in rinse, 1500 from west, centred, 100"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var inUse = context.Plan.Stations.Select(s => s.Room.Id).ToHashSet();
        var drained = context.Plan.Services.OfType<Drain>().Select(p => p.Room?.Id).ToHashSet();
        foreach (var room in context.Plan.Rooms.Where(r => r.WashedDown && !drained.Contains(r.Id) && inUse.Contains(r.Id)))
        {
            string drain = Suggest.Drain(room, context.Plan.Units);
            yield return CheckContext.Find(
                this, Severity.Warning, [room.Id], $"{Named.Of(room)} is washed down and has no drain",
                $"add one, such as: {drain}; or write `kept dry` in the room", room.Span, room.Floor.InteriorPoint.Coordinate)
                with
            { NewLine = drain, Limit = $"a drain wherever floors are flooded to clean them ({context.SourceOf(this).Text})" };
        }
    }
}
