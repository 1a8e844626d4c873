using Floorplan.Checks.Limits;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Views;
using Floorplan.Sizing;

namespace Floorplan.Drawing.Sheets.PowerLightAir;

/// <summary>The working space before each panel, where and as deep as <c>panel-space</c> judges it.</summary>
internal sealed class PanelSpaceLayer(PlanFacts facts) : PlanLayer(facts.Plan)
{
    private readonly PlanLimits limits = new(facts.Plan);

    public override IEnumerable<LegendEntry> Legend => facts.WorkingSpaces.Any(s => PanelDepths.For(limits, s) is not null)
        ? [new LegendEntry("working space before a panel", (scene, box) => scene.Rectangle(box, Pen, Layers.Legend))]
        : [];

    private Pen Pen => new(Standard.Narrow, Palette.Black, Dashes.LongDashDoubleDot(Standard.Narrow));

    public override void Draw(PlanCanvas canvas)
    {
        foreach (var space in facts.WorkingSpaces)
        {
            if (PanelDepths.For(limits, space)?.Value is not { } deep)
            {
                continue;
            }

            canvas.Scene.Polyline(
                [.. canvas.Transform.ToPaper(space.Shape(deep).ExteriorRing).Skip(1)], true, Pen, Layers.Power, "panel-space:"
                    + space.Panel.Id);
        }
    }
}
