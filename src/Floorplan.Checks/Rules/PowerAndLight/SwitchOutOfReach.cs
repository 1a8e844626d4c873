using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model.Services;
using Floorplan.Model.Shapes;
using Floorplan.Model.Stations;

namespace Floorplan.Checks.Rules.PowerAndLight;

/// <summary>Heights of switches, and what stands before them, against the published reach of one hand.</summary>
internal sealed class SwitchOutOfReach : Rule
{
    private const string Highest = "greatest height of a switch";
    private const string Lowest = "least height of a switch";
    private const string Over = "greatest height of a switch behind a thing 20 in deep or more";
    private const string Deepest = "greatest depth of what is reached over";

    // 48 in, 15 in, 44 in, 25 in and 20 in.
    private const double High = 1219.2;
    private const double Low = 381;
    private const double HighOver = 1117.6;
    private const double Deep = 635;
    private const double DeepEnoughToLower = 508;

    public override string Name => "switch-out-of-reach";

    public override RuleGroup Group => RuleGroup.PowerAndLight;

    public override string Says => "A switch is too high, too low, or behind something that one cannot reach over.";

    public override string Why
        => "Whoever must stop a machine or find the light reaches for the switch without looking, often with one hand full. A switch "
            + "behind "
            + "a tank is reached by climbing on it.";

    public override string Mend
        => "Set the switch between 15 in and 48 in (380 to 1220 mm) above the floor, where nothing deep stands before it.";

    public override string? Caution => ElectricWork.Caution;

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new Source(
            "2010 ADA Standards 308.2 and 308.3: reach 15 in to 48 in; over a thing 20 to 25 in deep 44 in",
            Origin.FoundInPublicCopy, Force.Law).In("us"),
        new Source(
            "2010 ADA Standards 203.9: work areas of staff are left out of most rules, so that the figures are advice here",
            Origin.FromMemory, Force.Law).In("us"),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(Highest, High, LimitUnit.Millimetres, Sources[0], Severity.Note),
        new(Lowest, Low, LimitUnit.Millimetres, Sources[0], Severity.Note),
        new(Over, HighOver, LimitUnit.Millimetres, Sources[0], Severity.Note),
        new(Deepest, Deep, LimitUnit.Millimetres, Sources[0], Severity.Note),
    ];

    public override string Bad => """
        plan "A switch by the door"
          units metric
          code us
        shell shed 6000 x 3000 x 2600
        room pack "Packing" dry from west to east
        door d1 pack to outside, south wall, 300 from west, 1000 x 2050, swings out, closes itself
        switch sw1 in pack, south wall, 1500 from west, height 1500
        """;

    public override IReadOnlyList<LineChange> Mended => [new("switch sw1", "switch sw1 in pack, south wall, 1500 from west, height 1100")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var switches = context.Plan.Services.OfType<Switch>().Where(s => s is { Room: not null, Wall: not null }).ToList();
        if (switches.Count == 0)
        {
            yield break;
        }

        var byRoom = context.Plan.Stations.Where(s => !s.Movable).ToLookup(s => s.Room.Id);
        foreach (var point in switches)
        {
            if (Fault(context, point, Before(point, byRoom[point.Room!.Id])) is { } finding)
            {
                yield return finding;
            }
        }
    }

    /// <summary>The heaviest obstacle first: one switch is one mistake.</summary>
    private Finding? Fault(CheckContext context, Switch point, (Station Thing, double Depth)? before)
    {
        double? height = point.Height?.Millimetres;
        if (before is { } b)
        {
            string away = $"move the switch to a free stretch of wall, or {Named.Of(b.Thing)} away from it";
            if (point.Height is { } at && b.Thing.Top > at && b.Thing.Bottom < at)
            {
                return CheckContext.Find(
                    this, Severity.Warning, [point.Id, b.Thing.Id], $"{Named.Of(b.Thing)} stands before switch {point.Id}", away,
                    point.Span, point.At.Coordinate);
            }

            if (context.Limit(this, Deepest) is { } deepest && b.Depth > deepest.Value + Tiers.Tolerance)
            {
                return CheckContext.Find(
                    this, deepest, b.Depth, [point.Id, b.Thing.Id],
                    $"switch {point.Id} is reached over {context.Text(b.Depth)} of {Named.Of(b.Thing)}", away, point.Span,
                    point.At.Coordinate);
            }

            if (height > DeepEnoughToLower
                && b.Depth >= DeepEnoughToLower
                && context.Limit(this, Over) is { } over
                && height > over.Value + Tiers.Tolerance)
            {
                return CheckContext.Find(
                    this, over, height.Value, [point.Id, b.Thing.Id],
                    $"switch {point.Id} is {context.Text(height.Value)} above the floor, behind {context.Text(b.Depth)} of "
                        + $"{Named.Of(b.Thing)}",
                    $"lower it by {Say.SizeUp(height.Value - over.Value, context.Plan.Units)}, or {away}", point.Span, point.At.Coordinate);
            }
        }

        if (height is { } h && context.Limit(this, Highest) is { } highest && h > highest.Value + Tiers.Tolerance)
        {
            return Height(context, point, highest, h, $"lower it by {Say.SizeUp(h - highest.Value, context.Plan.Units)}");
        }

        return height is { } l && context.Limit(this, Lowest) is { } lowest && l < lowest.Value - Tiers.Tolerance
            ? Height(context, point, lowest, l, $"raise it by {Say.SizeUp(lowest.Value - l, context.Plan.Units)}")
            : null;
    }

    private Finding Height(CheckContext context, Switch point, AppliedLimit limit, double height, string mend) => CheckContext.Find(
        this, limit, height, [point.Id], $"switch {point.Id} is {context.Text(height)} above the floor", mend, point.Span,
        point.At.Coordinate);

    /// <summary>
    /// The deepest thing between a switch and whoever reaches for it, and how far its far side is from the wall. Nobody fits
    /// into a gap behind it narrower than a large man's belly; what hangs above the hand is no hindrance.
    /// </summary>
    private static (Station Thing, double Depth)? Before(Switch point, IEnumerable<Station> stations)
    {
        var wall = point.Wall!.Value;
        bool across = wall is Side.North or Side.South;
        var things = stations
            .Where(s => (point.Height is not { } h || s.Bottom < h) && (across
                ? s.Bounds.West < point.At.X && s.Bounds.East > point.At.X
                : s.Bounds.South < point.At.Y && s.Bounds.North > point.At.Y))
            .Where(s => Gap(s, point, wall) < Body.Belly)
            .Select(s => (Thing: s, Depth: Off(s.Bounds.Of(wall.Opposite()), point, across)))
            .OrderByDescending(s => s.Depth).ToList();
        return things.Count == 0 ? null : things[0];
    }

    private static double Gap(Station thing, Switch point, Side wall)
        => Off(thing.Bounds.Of(wall), point, wall is Side.North or Side.South);

    private static double Off(Length side, Switch point, bool across) => Math.Abs((side - (across ? point.At.Y : point.At.X)).Millimetres);
}
