using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using NetTopologySuite.Geometries;
using NetTopologySuite.Index.Strtree;

namespace Floorplan.Drawing.Views;

/// <summary>What is drawn so far, by place, so that each room looks only at its own floor.</summary>
internal sealed class DrawnIndex
{
    private readonly STRtree<SceneItem> tree = new();
    private readonly bool any;

    public DrawnIndex(IEnumerable<SceneItem> drawn)
    {
        foreach (var item in drawn)
        {
            var box = BoxOf(item);
            if (!box.IsNothing)
            {
                tree.Insert(new Envelope(box.Left, box.Right, box.Top, box.Bottom), item);
                any = true;
            }
        }
    }

    public IEnumerable<SceneItem> In(PaperBox box) => any ? tree.Query(new Envelope(box.Left, box.Right, box.Top, box.Bottom)) : [];

    private static PaperBox BoxOf(SceneItem item) => item switch
    {
        LineItem line => PaperBox.Of(line.From, line.To),
        PolylineItem line => PaperBox.Of(line.Points),
        ArcItem arc => PaperBox.Around(arc.Centre, 2 * arc.Radius, 2 * arc.Radius),
        AreaItem area => PaperBox.Of(area.Rings),
        TextItem text => TextMeasure.Box(text),
        _ => PaperBox.Nothing,
    };
}
