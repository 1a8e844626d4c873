using Floorplan.Drawing.Labels.Drawn;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Views;

/// <summary>What is drawn so far, by place, so that each room looks only at its own floor.</summary>
internal sealed class DrawnIndex
{
    private readonly PaperIndex<SceneItem> items;

    /// <param name="area">The paper of the view.</param>
    public DrawnIndex(PaperBox area, IEnumerable<SceneItem> drawn)
    {
        items = new PaperIndex<SceneItem>(area);
        foreach (var item in drawn)
        {
            var box = BoxOf(item);
            if (!box.IsNothing)
            {
                items.Add(box, item);
            }
        }
    }

    /// <summary>The list holds until the next search.</summary>
    public IReadOnlyList<SceneItem> In(PaperBox box) => items.Near(box);

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
