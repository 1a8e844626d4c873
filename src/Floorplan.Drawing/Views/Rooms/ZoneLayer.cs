using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Scene;
using Floorplan.Model;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using NetTopologySuite.Geometries;

namespace Floorplan.Drawing.Views.Rooms;

/// <summary>The floors of the rooms: tint and hatch of their hygiene class.</summary>
/// <param name="edgeOnly">Hatch a band along the edge only, as large areas may be (ISO 128), so that dimensions and labels stay
/// clear.</param>
public sealed class ZoneLayer(Plan plan, bool edgeOnly) : PlanLayer(plan)
{
    /// <summary>Width of the hatched edge on paper, mm; own choice.</summary>
    private const double EdgeBand = 3;

    public override IEnumerable<LegendEntry> Legend => Plan.Rooms.Select(r => r.Class).Distinct().Order().Select(Sample);

    public override void Draw(PlanCanvas canvas)
    {
        foreach (var room in Plan.Rooms)
        {
            string group = "room:" + room.Id;
            var look = ZoneLook.Of(room.Class);
            var floor = canvas.Transform.Rings(room.Floor);
            if (floor.Count == 0)
            {
                continue;
            }

            if (look.Tint is not null)
            {
                canvas.Scene.Fill(floor, look.Tint, Layers.Floor, group);
            }

            Geometry hatched = edgeOnly
                ? Overlays.Less(room.Floor, room.Floor.Buffer(-EdgeBand * canvas.Transform.Denominator))
                : room.Floor;
            canvas.Scene.Hatch(canvas.Transform.Rings(hatched), look.Hatch, HatchPen, Layers.FloorHatch, group);
        }
    }

    private Pen HatchPen => new(Standard.Fine, Palette.HatchGrey);

    private LegendEntry Sample(HygieneClass hygieneClass)
    {
        var look = ZoneLook.Of(hygieneClass);
        return new LegendEntry($"{look.Letter}  {look.Name}", (scene, box) =>
        {
            if (look.Tint is not null)
            {
                scene.Fill(box, look.Tint, Layers.Legend);
            }

            scene.Hatch(box, look.Hatch, HatchPen, Layers.Legend);
            scene.Rectangle(box, new Pen(Standard.Narrow), Layers.Legend);
        });
    }
}
