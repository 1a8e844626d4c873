using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Symbols;
using Floorplan.Drawing.Views;
using Floorplan.Model;
using Floorplan.Model.Services;
using Floorplan.Sizing.LightAndAir;

namespace Floorplan.Drawing.Sheets.PowerLightAir;

/// <summary>In each room its light, and arrows where air comes in or goes out, on empty floor. Drawn after all that takes floor.</summary>
internal sealed class LightAndAirLayer(Plan plan, IReadOnlyDictionary<string, RoomLight> light) : PlanLayer(plan)
{
    private const double ArrowWidth = 5;
    private const double LightWidth = 16;
    private const double LightHeight = 4.5;

    public override IEnumerable<LegendEntry> Legend
    {
        get
        {
            if (Plan.Services.OfType<AirSupply>().Any())
            {
                yield return new LegendEntry(
                    "air is brought in", (scene, box)
                        => AirArrowSymbol.Draw(new SymbolBrush(scene, Standard, Layers.Legend), box.Centre, true));
            }

            if (Plan.Services.OfType<AirExhaust>().Any())
            {
                yield return new LegendEntry(
                    "air is drawn out", (scene, box)
                        => AirArrowSymbol.Draw(new SymbolBrush(scene, Standard, Layers.Legend), box.Centre, false));
            }
        }
    }

    public override void Draw(PlanCanvas canvas)
    {
        var drawn = new DrawnIndex(canvas.View.Box, canvas.Scene.Items.Where(i => i.Layer is not Layers.Floor));
        foreach (var room in Plan.Rooms.Where(r => !r.Floor.IsEmpty))
        {
            var bounds = canvas.Transform.ToPaper(room.Bounds);
            var floor = new EmptyFloor(room.Floor, canvas.Transform, drawn.In(bounds));
            foreach (var air in Plan.Services.OfType<AirPoint>().Where(s => s.Room?.Id == room.Id))
            {
                bool supply = air is AirSupply;
                if (floor.Find(ArrowWidth, AirArrowSymbol.Height + 2, bounds.Centre) is { } place)
                {
                    floor.Take(place);
                    AirArrowSymbol.Draw(canvas.Brush(Layers.Air, "air:" + room.Id, Band.Annotation), place.Centre, supply);
                }
            }

            // What finds no floor stands in the table of rooms.
            if (light.GetValueOrDefault(room.Id) is { } lit
                && floor.Find(LightWidth, LightHeight, new(bounds.Left, bounds.Bottom)) is { } free)
            {
                canvas.Labels.Add(new LabelRequest
                {
                    Id = "light:" + room.Id,
                    Lines = [lit.Level.Text],
                    Figures = [lit.Level],
                    Target = free,
                    Positions = [LabelPosition.Inside],
                    Priority = LabelPriority.Level,
                    CapHeight = Standard.NoteHeight,
                    SmallestCapHeight = Standard.SmallestHeight,
                    MayLead = false,
                    Optional = true,
                    Layer = Layers.Light,
                    Group = "light:" + room.Id,
                });
            }
        }
    }
}
