using Floorplan.Checks.Framework;
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
    private readonly double? depth = new PlanLimits(facts.Plan)
        .Find(RuleCatalogue.Find("panel-space")!, RuleCatalogue.Find("panel-space")!.Limits[0].Key)?.Value;

    public override IEnumerable<LegendEntry> Legend => depth is not null && facts.WorkingSpaces.Count > 0
        ? [new LegendEntry("working space before a panel", (scene, box) => scene.Rectangle(box, Pen, Layers.Legend))]
        : [];

    private Pen Pen => new(Standard.Narrow, Palette.Black, Dashes.LongDashDoubleDot(Standard.Narrow));

    public override void Draw(PlanCanvas canvas)
    {
        if (depth is not { } deep)
        {
            return;
        }

        foreach (var space in facts.WorkingSpaces)
        {
            canvas.Scene.Polyline(
                [.. canvas.Transform.ToPaper(space.Shape(deep).ExteriorRing).Skip(1)], true, Pen, Layers.Power, "panel-space:"
                    + space.Panel.Id);
        }
    }
}
