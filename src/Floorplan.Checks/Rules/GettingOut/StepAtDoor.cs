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
    private const string Stairs = "rise of one step of a building, as advised";
    private const string Drop = "drop without a guard";
    private const string MachineDrop = "drop of a platform without a guard, as advised";
    private const string Rails = "risers of stairs without rails";

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
        new Source("IBC 2018, 1011.5 and 1003.5, as adopted in Minnesota: risers of stairs, and one step at an outer door, at most 7 in",
            Origin.FoundInSecondaryCopy, Force.ModelCode).In("us"),
        new Source("29 CFR 1910.28(b)(1), US CFR: a guard at a drop of 4 ft or more", Origin.FoundInSecondaryCopy, Force.Law).In("us"),
        new Source("ISO 14122-3, stairs of machines: going and twice the rise 600 to 660 mm, so that with a going of 210 mm a rise is at "
            + "most 225 mm", Origin.FoundInSecondaryCopy, Force.Standard).In("eu"),
        new("steps of stairs at most 225 mm high; common practice", Origin.CommonPractice),
        new Source("ISO 14122-3, platforms of machines: a guard of 1100 mm where it is more than 500 mm down", Origin.FoundInSecondaryCopy,
            Force.Standard).In("eu"),
        new Source("ArbStättV, Germany, annex 2.1: a guard where people can fall more than 1 m", Origin.FoundInPublicCopy, Force.Law)
            .In("de"),
        new Source("29 CFR 1910.28(b)(11), US CFR: stair rails from 4 risers on, or 30 in of rise", Origin.FoundInSecondaryCopy, Force.Law)
            .In("us"),
        new("a guard where it is 1 m down or more; common practice", Origin.CommonPractice),
        new Source("29 CFR 1910.25(c), US CFR: risers of a workplace at most 9.5 in", Origin.FoundInSecondaryCopy, Force.Law).In("us"),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(Rise, 241.3, LimitUnit.Millimetres, Sources[8], Severity.Warning),
        new(Stairs, 177.8, LimitUnit.Millimetres, Sources[0], Severity.Note),
        new(Rise, 225, LimitUnit.Millimetres, Sources[2], Severity.Warning),
        new(Rise, 225, LimitUnit.Millimetres, Sources[3], Severity.Warning),
        new(Drop, 1219.2, LimitUnit.Millimetres, Sources[1], Severity.Warning),
        new(Drop, 1000, LimitUnit.Millimetres, Sources[5], Severity.Error),
        new(Drop, 1000, LimitUnit.Millimetres, Sources[7], Severity.Warning),
        new(MachineDrop, 500, LimitUnit.Millimetres, Sources[4], Severity.Note),
        new(Rails, 3, LimitUnit.Count, Sources[6], Severity.Warning),
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
            "door d1 cut to outside, south wall, 700 from west, 900 x 2050, swings out, closes itself, opens from inside, steps 4, guard"),
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
            if (Tiers.Above(Rises(context), rise) is { } step)
            {
                yield return TooHigh(context, door, height, rise, step);
            }
            else if (!door.Guard && Fall(context, height.Millimetres) is { } drop)
            {
                yield return CheckContext.Find(
                    this, drop, height.Millimetres, [door.Id],
                    $"outside {Named.Of(door)} it is {context.Text(height)} down to the ground, and the plan gives no guard",
                    $"put a rail round the landing and beside the steps, and write `guard` on {door.Id}", door.Span,
                    door.Centre.Coordinate);
            }
            else if (!door.Guard && door.Steps is { } risers && context.Limit(this, Rails) is { } rails && risers > rails.Value)
            {
                yield return CheckContext.Find(
                    this, rails, risers, [door.Id], $"the {risers} steps up to {Named.Of(door)} have no rail",
                    $"put a rail beside the steps, and write `guard` on {door.Id}", door.Span, door.Centre.Coordinate);
            }
        }
    }

    /// <summary>The plan's own figure alone, where it sets one.</summary>
    private IEnumerable<AppliedLimit> Rises(CheckContext context)
        => context.Limit(this, Rise) is { SetBy: not null } set
            ? [set]
            : new[] { context.Limit(this, Rise), context.Limit(this, Stairs) }.OfType<AppliedLimit>();

    /// <summary>Of the figures for a drop the heaviest that a height comes to.</summary>
    private AppliedLimit? Fall(CheckContext context, double height)
    {
        var all = new[] { context.Limit(this, Drop), context.Limit(this, MachineDrop) }.OfType<AppliedLimit>();
        return all.Where(l => l.Published.Key == Drop && l.Published.Source.Scope.Places.Contains("us")
            ? height >= l.Value - 1e-6
            : height > l.Value + Tiers.Tolerance).OrderByDescending(l => l.Severity).FirstOrDefault();
    }

    private Finding TooHigh(CheckContext context, Opening door, Length height, double rise, AppliedLimit limit)
    {
        int needed = (int)Math.Ceiling((height.Millimetres / Rises(context).Min(l => l.Value)) - 1e-6);
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
