using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;
using Floorplan.Model.Shells;

namespace Floorplan.Checks.Rules.Shell;

/// <summary>A trailer from the ground to its roof; what stands on the roof is not counted.</summary>
internal sealed class TooHighForRoad : Rule
{
    private const string Height = "highest on the road without a permit";

    public override string Name => "too-high-for-road";

    public override RuleGroup Group => RuleGroup.Shell;

    public override string Says
        => "A trailer is higher over the ground than may travel without a permit. Where the plan does not say how far the ground lies "
            + "below, the box alone is measured.";

    public override string Why => "A box that is too high takes the first low bridge, tree or filling station roof with it.";

    public override string Mend
        => "Build it lower, set it on lower axles, or ask the road authority. Vents and coolers on the roof count too: leave "
            + "room for them.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("states of the US: 13 ft 6 in, in some of the west 14 ft; common practice", Origin.CommonPractice),
        new("Directive 96/53/EC, Annex I, and StVZO section 32, Germany: 4.00 m", Origin.FoundInPublicCopy, Force.Law),
        new("bridges and halls are built for loads of about 4 m; common practice", Origin.CommonPractice),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(Height, 4114.8, LimitUnit.Millimetres, Sources[0], Severity.Warning, CodeChoice.Us),
        new(Height, 4000, LimitUnit.Millimetres, Sources[1], Severity.Warning, CodeChoice.Eu),
        new(Height, 4000, LimitUnit.Millimetres, Sources[2], Severity.Warning, CodeChoice.None),
    ];

    public override string Bad => """
        plan "Towed fish van"
          units metric
          code eu
        shell trailer 6 m x 2.5 m x 3.6 m
          axles 2
          ground 600 below floor
        room cut "Cutting" clean from west to east
        door d1 cut to outside, south wall, 400 from west, 900 x 2050, swings out, closes itself, opens from inside, steps 3, guard
        """;

    public override IReadOnlyList<LineChange> Mended => [new("shell trailer", "shell trailer 6 m x 2.5 m x 2.9 m")];

    public override bool AppliesTo(Plan plan) => plan.Shell.Kind == ShellKind.Trailer;

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var shell = context.Plan.Shell;
        double below = Math.Max(-shell.DatumHeight.Millimetres, shell.GroundBelowFloor?.Millimetres ?? 0);
        double height = shell.Top.Millimetres + below;
        if (Tiers.Above(context, this, height) is { } limit)
        {
            yield return CheckContext.Find(
                this, limit, height, [.. context.Plan.Rooms.Select(r => r.Id)],
                $"the roof of the trailer is {context.Text(height)} above the ground",
                $"build it {Say.SizeUp(height - limit.Value, context.Plan.Units)} lower, or ask the road authority for a permit",
                shell.Span, shell.Outside.InteriorPoint.Coordinate);
        }
    }
}
