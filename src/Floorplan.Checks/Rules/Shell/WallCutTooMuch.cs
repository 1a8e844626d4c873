using Floorplan.Checks.Framework;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Openings;
using Floorplan.Model.Shapes;
using Floorplan.Model.Shells;

namespace Floorplan.Checks.Rules.Shell;

/// <summary>The share of each corrugated wall's length that cut-outs take; what lies above another counts once. The end with the cargo doors has no such wall.</summary>
public sealed class WallCutTooMuch : Rule
{
    private const double Whole = 100;
    private const string TwoFifths = "share of a wall's length cut away";
    private const string Half = "share cut away that leaves half a wall";

    public override string Name => "wall-cut-too-much";

    public override RuleGroup Group => RuleGroup.Shell;

    public override string Says => "Openings take a large share of a container's corrugated wall.";

    public override string Why => "The corrugated sides are what keep the box from leaning and sagging; there is no bracing behind them. What is cut away must come back as posts, a header and welded frames.";

    public override string Mend => "Take fewer or narrower openings, spread them over both sides, or have an engineer design the steel that replaces the wall.";

    public override string? Caution => "Structural cut: have an engineer confirm every opening and its frame before steel is cut. Do not lift or stack a box that is cut this much until that is done.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("two fifths of the wall call for a second look, half of it for an engineer's design", Origin.OwnAssumption),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(TwoFifths, 40, LimitUnit.Percent, Sources[0], Severity.Note),
        new(Half, 50, LimitUnit.Percent, Sources[0], Severity.Warning),
    ];

    public override string Bad => Box("3200");

    public override string Good => Box("1200");

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var shell = context.Plan.Shell;
        if (shell.Kind != ShellKind.Container)
        {
            yield break;
        }

        var limits = Tiers.Holding(context, this);
        var outside = shell.Outside.EnvelopeInternal;
        foreach (var wall in context.Plan.Openings.Where(o => o.InShell && o.Kind != OpeningKind.CargoDoor && o.Wall != shell.DoorEnd).GroupBy(o => o.Wall))
        {
            double length = wall.Key.RunsEastWest() ? outside.Width : outside.Height;
            double share = Whole * Cut(wall) / length;
            if (limits.Where(l => share > l.Value + 1e-6).OrderByDescending(l => l.Severity).FirstOrDefault() is { } limit)
            {
                var widest = wall.MaxBy(o => o.Width.Nanometres)!;
                string name = wall.Key.Word();
                yield return CheckContext.Find(
                    this, limit, share, [.. wall.Select(o => o.Id)],
                    FormattableString.Invariant($"{Named.List(wall.Select(Named.Of))} {(wall.Count() == 1 ? "takes" : "take")} {share:0.#} % of the {name} wall's length, {context.Text(Cut(wall))} of {context.Text(length)}"),
                    $"take {Say.SizeUp(length * (share - limit.Value) / Whole, context.Plan.Units)} off the widths, or have an engineer design posts and a header for the {name} wall",
                    widest.Span, widest.Centre.Coordinate);
            }
        }
    }

    private static double Cut(IEnumerable<Opening> wall)
    {
        double cut = 0;
        double reached = double.NegativeInfinity;
        foreach (var hole in wall.Select(o => FrameHole.Of(o, default)).OrderBy(h => h.From.Nanometres))
        {
            cut += Math.Max(0, hole.To.Millimetres - Math.Max(hole.From.Millimetres, reached));
            reached = Math.Max(reached, hole.To.Millimetres);
        }

        return cut;
    }

    private static string Box(string width) => $"""
        plan "A serving side"
          units metric
        shell container 20 ft high-cube
          lining walls 50, ceiling 50, floor 50
          doors west
        room work "Work room" dry from west to east
        door d1 work to outside, south wall, 700 from west, 900 x 2050, swings out, closes itself, opens from inside
        hatch h1 work to outside, north wall, 1000 from west, {width} x 900, sill 1000
        """;
}
