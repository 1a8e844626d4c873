using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shells;

namespace Floorplan.Checks.Rules.Shell;

/// <summary>The outside width of a trailer.</summary>
internal sealed class TooWideForRoad : Rule
{
    private const string Width = "widest on the road without a permit";

    private const double KeptCold = 2600;
    private const double ThickWall = 45;

    public override string Name => "too-wide-for-road";

    public override RuleGroup Group => RuleGroup.Shell;

    public override string Says => "A trailer is wider than may travel without a permit.";

    public override string Why
        => "A wide trailer needs a permit, signs and often an escort for each journey, and does not pass every bridge and gate.";

    public override string Mend
        => "Build it narrower, or ask the road authority before it is built. Other countries have other widths: set yours with `limit`.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new Source("23 CFR 658.15, US CFR: 102 in on the National Network", Origin.FoundInPublicCopy, Force.Law).In("us"),
        new Source("Directive 96/53/EC, Annex I 1.2, and StVZO 32, Germany: 2.55 m; a body that is kept cold, with walls of 45 mm or more, "
            + "2.60 m", Origin.FoundInSecondaryCopy, Force.Law).In("eu"),
        new Source("Construction and Use Regulations, UK: trailers 2.55 m", Origin.FoundInSecondaryCopy, Force.Law).In("uk"),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(Width, 2590.8, LimitUnit.Millimetres, Sources[0], Severity.Warning),
        new(Width, 2550, LimitUnit.Millimetres, Sources[1], Severity.Warning),
        new(Width, 2550, LimitUnit.Millimetres, Sources[2], Severity.Warning),
    ];

    public override string Bad => """
        plan "Towed fish van"
          units metric
          code us
        shell trailer 6 m x 2800 x 2.5 m
          axles 2
        room cut "Cutting" clean from west to east
        door d1 cut to outside, south wall, 400 from west, 900 x 2050, swings out, closes itself, opens from inside
        """;

    public override IReadOnlyList<LineChange> Mended => [new("shell trailer", "shell trailer 6 m x 2500 x 2.5 m")];

    public override bool AppliesTo(Plan plan) => plan.Shell.Kind == ShellKind.Trailer;

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var shell = context.Plan.Shell;
        double width = shell.Outside.EnvelopeInternal.Height;
        if (context.Limit(this) is not { } published)
        {
            yield break;
        }

        var limit = published is { SetBy: null, Value: 2550 } && published.Published.Source == Sources[1] && IsKeptCold(context.Plan)
            ? published with { Value = KeptCold, Text = $"limit {context.Text(KeptCold)} ({Sources[1].Text})" }
            : published;
        if (width > limit.Value + Tiers.Tolerance)
        {
            yield return CheckContext.Find(
                this, limit, width, [.. context.Plan.Rooms.Select(r => r.Id)], $"the trailer is {context.Text(width)} wide",
                $"build it {Say.SizeUp(width - limit.Value, context.Plan.Units)} narrower, or ask the road authority for a permit",
                shell.Span, shell.Outside.InteriorPoint.Coordinate);
        }
    }

    /// <summary>A body with cold rooms alone, thickly walled.</summary>
    private static bool IsKeptCold(Plan plan) => plan.Shell.WallLining.Millimetres >= ThickWall
        && plan.Rooms.Count > 0 && plan.Rooms.All(r => r.Class == HygieneClass.Cold);
}
