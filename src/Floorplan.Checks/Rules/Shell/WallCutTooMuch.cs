using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Shapes;

namespace Floorplan.Checks.Rules.Shell;

/// <summary>
/// The share of each corrugated wall's length that holes take, as sheet 6 cuts them: clear opening and frame; what lies above another
/// counts once. The end with the cargo doors has no such wall.
/// </summary>
internal sealed class WallCutTooMuch : Rule
{
    private const double Whole = 100;
    private const string TwoFifths = "share of a wall's length cut away";
    private const string Half = "share cut away that leaves half a wall";

    public override string Name => "wall-cut-too-much";

    public override RuleGroup Group => RuleGroup.Shell;

    public override string Says => "Openings take a large share of a container's corrugated wall.";

    public override string Why
        => "The corrugated sides are what keep the box from leaning and sagging; there is no bracing behind them. What is cut away must "
            + "come back as posts, a header and welded frames.";

    public override string Mend
        => "Take fewer or narrower openings, spread them over both sides, or have an engineer design the steel that replaces the wall.";

    public override string? Caution
        => "Structural cut: have an engineer confirm every opening and its frame before steel is cut. Do not lift or stack a box that is "
            + "cut this much until that is done.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("two fifths of the wall call for a second look, half of it for an engineer's design", Origin.OwnAssumption),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(TwoFifths, 40, LimitUnit.Percent, Sources[0], Severity.Note),
        new(Half, 50, LimitUnit.Percent, Sources[0], Severity.Warning),
    ];

    public override string Bad => """
        plan "A serving side"
          units metric
        shell container 20 ft high-cube
          lining walls 50, ceiling 50, floor 50
          doors west
        room work "Work room" dry from west to east
        door d1 work to outside, south wall, 700 from west, 900 x 2050, swings out, closes itself, opens from inside
        hatch h1 work to outside, north wall, 1000 from west, 3200 x 900, sill 1000
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("hatch h1", "hatch h1 work to outside, north wall, 1000 from west, 1200 x 900, sill 1000"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var limits = Tiers.Holding(context, this);
        foreach (var wall in context.Facts.WallCuts)
        {
            double percent = Whole * wall.Share.Value;
            if (limits.Where(l => percent > l.Value + 1e-6).OrderByDescending(l => l.Severity).FirstOrDefault() is { } limit)
            {
                var widest = wall.Cuts.MaxBy(c => c.Width.Nanometres)!.Opening;
                string name = wall.Wall.Side.Word();
                yield return CheckContext.Find(
                    this, limit, percent, [.. wall.Cuts.Select(c => c.Opening.Id)],
                    $"the holes for {Named.List(wall.Cuts.Select(c => Named.Of(c.Opening)))} take {wall.Share.Text} of the {name} wall's "
                        + $"length, {wall.Length.Text} of {context.Text(wall.Wall.Run)} with their frames",
                    $"take {Say.SizeUp(wall.Wall.Run.Millimetres * (percent - limit.Value) / Whole, context.Plan.Units)} off the widths, "
                        + $"or have an engineer design posts and a header for the {name} wall",
                    widest.Span, widest.Centre.Coordinate)
                    with
                { Figures = [wall.Share, wall.Length] };
            }
        }
    }
}
