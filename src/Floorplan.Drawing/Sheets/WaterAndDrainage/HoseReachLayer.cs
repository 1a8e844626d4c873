using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Views;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Services;
using Floorplan.Model.Shapes;
using NetTopologySuite.Geometries;

namespace Floorplan.Drawing.Sheets.WaterAndDrainage;

/// <summary>
/// How far a hose reaches, straight from its point, within its room. Where a straight line reaches all of the room, the table of points
/// says whether the hose does on its way round what stands there.
/// </summary>
public sealed class HoseReachLayer(Plan plan) : PlanLayer(plan)
{
    private const int SegmentsPerQuarter = 24;

    private IEnumerable<Hose> Hoses => Plan.Services.OfType<Hose>().Where(h => h is { Length: not null, Room: not null });

    public override IEnumerable<LegendEntry> Legend => Hoses.Any(h => !Reach(h).IsEmpty)
        ? [new LegendEntry(
            "hose reach, straight", (scene, box)
                => scene.Line(new(box.Left, box.Centre.Y), new(box.Right, box.Centre.Y), Pen, Layers.Legend))]
        : [];

    private Pen Pen => new(Standard.Narrow, Palette.Blue, Dashes.LongDashDoubleDot(Standard.Narrow));

    public override void Draw(PlanCanvas canvas)
    {
        foreach (var hose in Hoses)
        {
            string group = "hose-reach:" + hose.Id;
            var inside = Reach(hose);
            PaperPoint? labelAt = null;
            for (int i = 0; i < inside.NumGeometries; i++)
            {
                if (inside.GetGeometryN(i) is LineString { IsEmpty: false } arc)
                {
                    var path = canvas.Transform.ToPaper(arc);
                    canvas.Scene.Polyline(path, false, Pen, Layers.Water, group, Band.Flow);
                    labelAt = path[path.Count / 2];
                }
            }

            if (labelAt is { } at)
            {
                canvas.Labels.Add(new LabelRequest
                {
                    Id = group,
                    Lines = [$"hose {QuantityText.Distance(hose.Length!.Value.Millimetres, Plan.Units)}"],
                    Target = PaperBox.Around(at, 3, 3),
                    Positions = LabelSides.AllRound,
                    Priority = LabelPriority.Level,
                    CapHeight = Standard.NoteHeight,
                    SmallestCapHeight = Standard.SmallestHeight,
                    LeadTo = at,
                    Layer = Layers.Water,
                    Group = group,
                });
            }
        }
    }

    /// <summary>What of the circle of the hose's length is within its room; empty where it reaches all of it.</summary>
    private static Geometry Reach(Hose hose)
    {
        var circle = (Polygon)Shape.Factory.CreatePoint(hose.At.Coordinate)
            .Buffer(hose.Length!.Value.Millimetres, SegmentsPerQuarter);
        return Overlays.Common(circle.ExteriorRing, hose.Room!.Floor);
    }
}
