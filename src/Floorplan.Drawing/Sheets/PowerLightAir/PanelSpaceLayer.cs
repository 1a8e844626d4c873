using Floorplan.Checks.Framework;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Views;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Services;
using Floorplan.Model.Shapes;

namespace Floorplan.Drawing.Sheets.PowerLightAir;

/// <summary>The working space before each panel, as deep as <c>panel-space</c> measures it.</summary>
internal sealed class PanelSpaceLayer(Plan plan) : PlanLayer(plan)
{
    /// <summary>Half of 30 in, NEC 110.26(A)(2).</summary>
    private const double HalfWidth = 381;

    private readonly double? depth = new PlanLimits(plan).Find(RuleCatalogue.Find("panel-space")!, RuleCatalogue.Find("panel-space")!.Limits[0].Key)?.Value;

    public override IEnumerable<LegendEntry> Legend => depth is not null && Panels.Any()
        ? [new LegendEntry("working space before a panel", (scene, box) => scene.Rectangle(box, Pen, Layers.Legend))]
        : [];

    private IEnumerable<Panel> Panels => Plan.Services.OfType<Panel>().Where(p => p.Wall is not null);

    private Pen Pen => new(Standard.Narrow, Palette.Black, Dashes.LongDashDoubleDot(Standard.Narrow));

    public override void Draw(PlanCanvas canvas)
    {
        if (depth is not { } deep)
        {
            return;
        }

        foreach (var panel in Panels)
        {
            var into = panel.Wall!.Value.Opposite().Direction();
            var at = canvas.Transform.ToPaper(InRoom(panel));
            double far = canvas.Transform.Size(deep);
            double half = canvas.Transform.Size(HalfWidth);
            var across = new PaperPoint(Math.Abs(into.Y) * half, Math.Abs(into.X) * half);
            var end = at + new PaperPoint(into.X * far, into.Y * far);
            canvas.Scene.Polyline([at - across, at + across, end + across, end - across], true, Pen, Layers.Power, "panel-space:" + panel.Id);
        }
    }

    /// <summary>The middle of the space: it need not be centred on the panel, so that beside a corner it is moved into the room.</summary>
    private static PlanPoint InRoom(Panel panel)
    {
        if (panel.Room is not { } room)
        {
            return panel.At;
        }

        var half = Length.FromMillimetres(HalfWidth);
        return panel.Wall!.Value.RunsEastWest()
            ? panel.At with { X = Within(panel.At.X, room.Bounds.West + half, room.Bounds.East - half) }
            : panel.At with { Y = Within(panel.At.Y, room.Bounds.South + half, room.Bounds.North - half) };
    }

    private static Length Within(Length at, Length low, Length high) => high < low ? (low + high) / 2 : Length.Max(low, Length.Min(at, high));
}
