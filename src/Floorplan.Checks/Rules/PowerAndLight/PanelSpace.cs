using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Sizing.Power;

namespace Floorplan.Checks.Rules.PowerAndLight;

/// <summary>The working space before an electrical panel: as deep as the law says, 30 in wide, kept free of fixed things.</summary>
internal sealed class PanelSpace : Rule
{
    /// <summary>3 ft for 0 to 150 V to ground in any condition (29 CFR 1910.303 Table S-1, as WAC 296-24-95703 gives it).</summary>
    private const double Depth = 914.4;

    /// <summary>IEC 60364-7-729, from memory.</summary>
    private const double Gangway = 700;

    public override string Name => "panel-space";

    public override RuleGroup Group => RuleGroup.PowerAndLight;

    public override string Says => "Something fixed, or a wall, stands in the working space before an electrical panel.";

    public override string Why
        => "Whoever works at a live panel needs room to step back, and whoever must switch off in an emergency must not climb over a tank.";

    public override string Mend
        => "Move the panel or what stands before it. A steel wall opposite counts as grounded, and higher voltages ask for more.";

    public override string? Caution => ElectricWork.Caution;

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new Source(
            "29 CFR 1910.303, Table S-1 (as WAC 296-24-95703): 3 ft before live parts of 0 to 150 V to ground", Origin.FoundInPublicCopy,
            Force.Law).In("us"),
        new Source("NEC 2023 110.26(A)(2): 30 in wide", Origin.FoundInPublicCopy, Force.ModelCode).In("us"),
        new Source("NEC 2023 110.26(A)(3): 6 ft 6 in high", Origin.FromMemory, Force.ModelCode).In("us"),
        new Source(
            "29 CFR 1910.303, Table S-1, and NEC 2023 110.26(A)(1): for 151 to 600 V to ground 3 ft facing nothing, 3 ft 6 in facing "
                + "grounded parts such as a steel wall, 4 ft facing live parts", Origin.FoundInSecondaryCopy, Force.Law).In("us"),
        new Source("IEC 60364-7-729: gangways of 700 mm before panels, in locked rooms alone; elsewhere accessible, without a figure",
            Origin.FromMemory, Force.Standard).In("eu"),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(PanelDepths.Depth, Depth, LimitUnit.Millimetres, Sources[0], Severity.Error),
        new(PanelDepths.Depth, Gangway, LimitUnit.Millimetres, Sources[4], Severity.Note),
        new(PanelDepths.Grounded, 1066.8, LimitUnit.Millimetres, Sources[3], Severity.Warning),
        new(PanelDepths.Live, 1219.2, LimitUnit.Millimetres, Sources[3], Severity.Warning),
    ];

    public override string Bad => """
        plan "Panel and tank"
          units metric
          code us
        shell shed 6000 x 3000 x 2600
        room pack "Packing" dry from west to east
        door d1 pack to outside, south wall, 300 from west, 1000 x 2050, swings out, closes itself
        panel p1 in pack, east wall, 1500 from south, 100 A 230 V single-phase
        station tank "Brine tank" in pack
          size 1200 x 900 x 900
          place 600 from east, 1100 from south
        """;

    public override IReadOnlyList<LineChange> Mended => [new("place 600", "  place 1000 from east, 1100 from south")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        foreach (var space in context.Facts.WorkingSpaces)
        {
            if (context.PanelDepth(space) is { } limit && space.Free.Value < limit.Value - Tiers.Tolerance)
            {
                var (panel, by) = (space.Panel, space.EndedBy);
                string what = by is null ? "the wall opposite" : Named.Of(by);
                string volts = space.ToGround is null ? "; its voltage is not said, and over 150 V to ground asks for more" : "";
                string more = Say.SizeUp(limit.Value - space.Free.Value, context.Plan.Units);
                yield return CheckContext.Find(
                    this, limit, space.Free, by is null ? [panel.Id] : [panel.Id, by.Id],
                    $"{what} stands {space.Free.Text} before the panel {panel.Id}{volts}",
                    $"leave {context.Text(limit.Value)} free before it over a width of {context.Text(WorkingSpace.Width)}: move "
                        + $"{(by is null ? panel.Id : what)} {more} or more",
                    panel.Span, panel.At.Coordinate);
            }
        }
    }
}
