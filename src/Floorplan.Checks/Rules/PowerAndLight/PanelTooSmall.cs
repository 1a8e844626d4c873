using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Sizing.Power;

namespace Floorplan.Checks.Rules.PowerAndLight;

/// <summary>What is on at once against what the panel is rated for.</summary>
internal sealed class PanelTooSmall : Rule
{
    private const string Share = "load of a panel as a share of its rating";

    public override string Name => "panel-too-small";

    public override RuleGroup Group => RuleGroup.PowerAndLight;

    public override string Says => "What is on at once draws more than the panel is rated for, on its most loaded line.";

    public override string Why => "The main breaker trips and the whole unit stands dark, with product on the line and water running.";

    public override string Mend => "Write a larger panel and ask for the supply that it needs, or heat with something else than power.";

    public override string? Caution => ElectricWork.Caution;

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("NEC 408.30: a panel is rated for no less than the load by article 220", Origin.FromMemory, Force.ModelCode),
        PowerSources.IecDevice,
        PowerSources.UsDemand,
        PowerSources.Diversity,
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(Share, 100, LimitUnit.Percent, Sources[0], Severity.Warning, CodeChoice.Us),
        new(Share, 100, LimitUnit.Percent, Sources[1], Severity.Warning, CodeChoice.Eu, CodeChoice.None),
    ];

    public override string Bad => """
        plan "Boiler on a small panel"
          units metric
        shell shed 6000 x 3000 x 2600
        room make "Making" dry from west to east
        door d1 make to outside, south wall, 300 from west, 1000 x 2050, swings out, closes itself
        panel p1 in make, east wall, 1500 from south, 32 A 230 V single-phase
        station vat "Vat" in make
          size 1000 x 1000 x 900
          place against north wall, 1000 from west
          needs power 230 V 9 kW
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("panel p1", "panel p1 in make, east wall, 1500 from south, 63 A 230 V single-phase"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        if (context.Facts.PowerDesign is not { } design || context.Limit(this) is not { } limit)
        {
            yield break;
        }

        foreach (var panel in design.Panels)
        {
            if (panel.Rating is not { } rating || 100 * panel.Current.Value / rating.Value is var share && share <= limit.Value + 1e-6)
            {
                continue;
            }

            double needed = Math.Ceiling(panel.Current.Value * 100 / limit.Value);
            string other = panel.System.Phases == 3 ? "" : ", or a three-phase supply";
            yield return CheckContext.Find(
                this, limit, share, [panel.Panel.Id],
                $"panel {panel.Panel.Id} is for {rating.Text}, what is on at once draws {panel.Current.Text} on its most loaded line "
                    + $"({panel.Demand.Text} in all)",
                $"write {context.Text(needed, Measure.Current)} or more at panel {panel.Panel.Id} and ask the supplier for it{other}",
                panel.Panel.Span, panel.Panel.At.Coordinate) with
            {
                Figures = [panel.Current, panel.Demand, rating],
            };
        }
    }
}
