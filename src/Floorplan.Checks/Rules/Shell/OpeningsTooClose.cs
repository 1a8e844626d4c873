using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Openings;
using Floorplan.Model.Shapes;
using Floorplan.Model.Shells;

namespace Floorplan.Checks.Rules.Shell;

/// <summary>
/// The wall left between neighbouring holes of one wall of a container or trailer, as sheet 6 cuts them: clear opening and frame.
/// </summary>
internal sealed class OpeningsTooClose : Rule
{
    private const string Left = "wall left between two frames";
    private const string Frames = "frames side by side";

    public override string Name => "openings-too-close";

    public override RuleGroup Group => RuleGroup.Shell;

    public override string Says
        => "Two openings in one wall of a container or trailer are cut so close together that little or no wall is left between them.";

    public override string Why
        => "Each cut-out needs a steel frame of its own, and the sheet between them holds the wall square. A narrow strip buckles while "
            + "it is welded and carries nothing after.";

    public override string Mend => "Move them apart, or cut one hole with one frame and a post between.";

    public override string? Caution => "Structural cut: have an engineer confirm every opening and its frame before steel is cut.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new(
            "a strip left whole between two frames: one wave of a container's side, about 280 mm, and as much of a trailer's",
            Origin.OwnAssumption),
        new("two frames cannot stand in one place: geometry of the holes that are cut", Origin.OwnAssumption, Force.Measured),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(Left, 280, LimitUnit.Millimetres, Sources[0], Severity.Note),
        new(Frames, 0, LimitUnit.Millimetres, Sources[1], Severity.Warning),
    ];

    public override string Bad => """
        plan "Two windows"
          units metric
        shell container 20 ft high-cube
          lining walls 50, ceiling 50, floor 50
          doors west
        room work "Work room" dry from west to east
        door d1 work to outside, south wall, 700 from west, 900 x 2050, swings out, closes itself, opens from inside
        window n1 work to outside, north wall, 1000 from west, 800 x 600, sill 1200
        window n2 work to outside, north wall, 1860 from west, 800 x 600, sill 1200
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("window n2", "window n2 work to outside, north wall, 2200 from west, 800 x 600, sill 1200"),
    ];

    public override bool AppliesTo(Plan plan) => plan.Shell.Kind is ShellKind.Container or ShellKind.Trailer;

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var limits = Tiers.Holding(context, this);
        double widest = limits.Select(l => l.Value).DefaultIfEmpty(0).Max();
        foreach (var wall in context.Facts.CutOuts.GroupBy(c => c.Wall))
        {
            // By where they start: beyond the first that starts too far away, none is near.
            var cuts = wall.Select(c => (c.Opening, Hole: FrameHole.Of(c))).OrderBy(c => c.Hole.From.Nanometres).ToList();
            for (int i = 0; i < cuts.Count; i++)
            {
                for (int j = i + 1; j < cuts.Count && (cuts[j].Hole.From - cuts[i].Hole.To).Millimetres < widest; j++)
                {
                    var gap = cuts[i].Hole.Gap(cuts[j].Hole);
                    if (Tiers.Below(limits, gap.Millimetres) is { } limit)
                    {
                        yield return Close(context, cuts[i], cuts[j], gap, limit, widest);
                    }
                }
            }
        }
    }

    private Finding Close(
        CheckContext context, (Opening Opening, FrameHole Hole) first, (Opening Opening, FrameHole Hole) second, Length gap,
        AppliedLimit limit, double widest)
    {
        var (up, down) = (second.Hole.Bottom - first.Hole.Top, first.Hole.Bottom - second.Hole.Top);
        bool stacked = Length.Max(up, down) > second.Hole.From - first.Hole.To;
        string heading = stacked ? (up > down ? "up" : "down") : first.Opening.Wall.RunsEastWest() ? "east" : "north";
        string left = gap > Length.Zero
            ? $"leave {context.Text(gap)} of wall between their frames"
            : gap < Length.Zero
            ? $"need frames that run {context.Text(-gap)} into each other"
            : "leave no wall between their frames";
        return CheckContext.Find(
            this, limit, gap.Millimetres, [first.Opening.Id, second.Opening.Id],
            $"{Named.Of(first.Opening)} and {Named.Of(second.Opening)} {left}",
            $"move {Named.Of(second.Opening)} {Say.SizeUp(widest - gap.Millimetres, context.Plan.Units)} {heading}, or make one hole of "
                + "the two",
            second.Opening.Span, second.Opening.Centre.Coordinate);
    }
}
