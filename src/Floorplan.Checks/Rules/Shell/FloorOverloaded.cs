using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;
using Floorplan.Model.Shells;
using Floorplan.Sizing.Weights;

namespace Floorplan.Checks.Rules.Shell;

/// <summary>
/// Weight on each metre of a container's length: a thing's full weight spread over its own length, or over a metre where it is
/// shorter, together with what stands beside it, partitions, and the floor build-up.
/// </summary>
internal sealed class FloorOverloaded : Rule
{
    private const string Short = "weight on a metre of the floor's length";
    private const string Long = "weight on a metre of the floor's length, 40 ft and longer";

    /// <summary>In mm.</summary>
    private const double Metre = 1000;

    /// <summary>Between a box of 20 ft and one of 40 ft, in mm.</summary>
    private const double LongBox = 9000;

    public override string Name => "floor-overloaded";

    public override RuleGroup Group => RuleGroup.Shell;

    public override string Says
        => "Things stand so close together, or weigh so much, that a container's floor carries more on a metre of its length than it is "
            + "built for.";

    public override string Why
        => "Full tanks weigh a tonne for each cubic metre, and they stand still for years. Cross members bend, the floor dishes, and "
            + "falls and drains no longer work.";

    public override string Mend
        => "Spread the heavy things along the box, stand them on bearers across several cross members, or fill them less.";

    public override string? Caution
        => "Have an engineer confirm heavy loads, how they spread to the cross members, and what the box itself stands on.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("container trade figures: 4 t on a metre in a 20 ft box, 3 t in a 40 ft box", Origin.FoundInPublicCopy),
        new("a thing shorter than a metre spreads its weight over a metre of floor", Origin.OwnAssumption),
        ShellLayers.Usual,
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(Short, 4000, LimitUnit.Kilograms, Sources[0], Severity.Warning),
        new(Long, 3000, LimitUnit.Kilograms, Sources[0], Severity.Warning),
    ];

    public override string Bad => """
        plan "Brine tank"
          units metric
        shell container 20 ft high-cube
          lining walls 50, ceiling 50, floor 50
          doors west
        room cut "Cutting" clean from west to east
        door d1 cut to outside, south wall, 700 from west, 900 x 2050, swings out, closes itself, opens from inside
        drain fd1 floor in cut, 1500 from west, centred, 100
        station tank "Brine tank" in cut
          size   1200 x 1200 x 1400
          place  against north wall, 2500 from west
          weight 300 kg empty, 5200 kg full
        """;

    public override IReadOnlyList<LineChange> Mended => [new("weight 300", "  weight 300 kg empty, 3200 kg full")];

    public override bool AppliesTo(Plan plan) => plan.Shell.Kind == ShellKind.Container;

    /// <summary>A plan sets one figure, whatever the box.</summary>
    public override string MainKey(Plan plan) =>
        new PlanLimits(plan).Find(this, Short) is { SetBy: not null } || plan.Shell.Outside.EnvelopeInternal.Width < LongBox
            ? Short
            : Long;

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var limit = context.Limit(this, MainKey(context.Plan));
        if (limit is null
            || context.Facts.FloorLoad is not { Things: { Count: > 0 } there, Load: var load }
            || load.Value <= limit.Value + 1e-6)
        {
            yield break;
        }

        yield return CheckContext.Find(
            this, limit, load, [.. there.Select(s => s.Id)],
            $"the floor under {Named.List(there.Select(Named.Of))} carries {load.Text} on {context.Walk(Metre)} of its length, full",
            there.Count > 1
                ? $"move {Named.Of(there[^1])} along the box, away from {Named.Of(there[0])}"
                : $"spread {Named.Of(there[0])} on bearers, or make it longer or lighter",
            there[0].Span, there[0].Footprint.Centroid.Coordinate);
    }
}
