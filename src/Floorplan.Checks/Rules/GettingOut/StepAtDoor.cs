using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model.Openings;

namespace Floorplan.Checks.Rules.GettingOut;

/// <summary>
/// The rise from the ground to the floor at every door to outside, against its steps, ramp and guard. Silent where the plan does not
/// say how far the ground lies below.
/// </summary>
internal sealed class StepAtDoor : Rule
{
    private const string Rise = "rise of one step";
    private const string Drop = "drop without a guard";

    public override string Name => "step-at-door";

    public override RuleGroup Group => RuleGroup.GettingOut;

    public override string Says => "The floor lies so far above the ground at a door that people need steps, lower steps, or a guard.";

    public override string Why
        => "People step out with full hands and wet boots. A high step is where they fall, and with a crate nobody sees it; from a high "
            + "edge a fall kills.";

    public override string Mend
        => "Write `steps` with their number, or `ramp`, on the door; write `guard` where there is a rail beside them, or a bar across a "
            + "door that nobody steps through.";

    public override string? Caution => "Steps, ramps, landings and rails carry people: have them built to local code.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("29 CFR 1910.25, US CFR: a riser at most 9.5 in", Origin.FoundInSecondaryCopy, Force.Law),
        new("29 CFR 1910.28(b)(1), US CFR: a guard at a drop of 4 ft or more", Origin.FoundInSecondaryCopy, Force.Law),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(Rise, 241.3, LimitUnit.Millimetres, Sources[0], Severity.Warning),
        new(Drop, 1219.2, LimitUnit.Millimetres, Sources[1], Severity.Warning),
    ];

    public override string Bad => """
        plan "On blocks"
          units metric
          code us
        shell container 20 ft high-cube
          lining walls 50, ceiling 50, floor 50
          doors west
          ground 600 below floor
        room cut "Cutting" clean from west to east
        door d1 cut to outside, south wall, 700 from west, 900 x 2050, swings out, closes itself, opens from inside
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        new(
            "door d1",
            "door d1 cut to outside, south wall, 700 from west, 900 x 2050, swings out, closes itself, opens from inside, steps 3"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        if (context.Plan.Shell.GroundBelowFloor is not { } ground)
        {
            yield break;
        }

        foreach (var door in context.Plan.Openings.Where(o => o.InShell && o.IsWalkable))
        {
            var height = ground + door.Sill;
            bool nobodySteps = door.Guard && !door.Ramp && door.Steps is null;
            double rise = door.Ramp || nobodySteps ? 0 : height.Millimetres / (door.Steps ?? 1);
            if (context.Limit(this, Rise) is { } step && rise > step.Value + Tiers.Tolerance)
            {
                yield return TooHigh(context, door, height, rise, step);
            }
            else if (context.Limit(this, Drop) is { } drop && !door.Guard && height.Millimetres >= drop.Value - 1e-6)
            {
                yield return CheckContext.Find(
                    this, drop, height.Millimetres, [door.Id],
                    $"outside {Named.Of(door)} it is {context.Text(height)} down to the ground, and the plan gives no guard",
                    $"put a rail round the landing and beside the steps, and write `guard` on {door.Id}", door.Span,
                    door.Centre.Coordinate);
            }
        }
    }

    private Finding TooHigh(CheckContext context, Opening door, Length height, double rise, AppliedLimit limit)
    {
        int needed = (int)Math.Ceiling((height.Millimetres / limit.Value) - 1e-6);
        string message = door.Steps is { } steps
            ? $"the {(steps == 1 ? "step" : FormattableString.Invariant($"{steps} steps"))} up to {Named.Of(door)} "
                + $"{(steps == 1 ? "is" : "are")} {context.Text(rise)} high{(steps == 1 ? "" : " each")}"
            : $"the floor at {Named.Of(door)} lies {context.Text(height)} above the ground, and the plan gives no steps";
        return CheckContext.Find(
            this, limit, rise, [door.Id], message,
            FormattableString.Invariant($"write `steps {needed}` on {door.Id}, which makes them ")
            + $"{context.Text(height.Millimetres / needed)} high each, or `ramp`, and build it so",
            door.Span, door.Centre.Coordinate);
    }
}
