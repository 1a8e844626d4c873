using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using Floorplan.Model;

namespace Floorplan.Drawing.Views.Stations;

/// <summary>Floor that must stay free, outlined with two dots and a long dash, with what it is for.</summary>
public sealed class ClearSpaceLayer(Plan plan) : PlanLayer(plan)
{
    private const int LongestPurpose = 40;

    public override IEnumerable<LegendEntry> Legend => Plan.Stations.Any(s => s.Clears.Count > 0)
        ? [new LegendEntry("floor to keep clear", (scene, box) => scene.Rectangle(box, Pen, Layers.Legend))]
        : [];

    private Pen Pen => new(Standard.Narrow, Palette.Black, Dashes.LongDashDoubleDot(Standard.Narrow));

    public override void Draw(PlanCanvas canvas)
    {
        foreach (var station in Plan.Stations)
        {
            for (int i = 0; i < station.Clears.Count; i++)
            {
                var clear = station.Clears[i];
                string group = FormattableString.Invariant($"clear:{station.Id}:{i + 1}");
                foreach (var ring in canvas.Transform.Rings(clear.Floor))
                {
                    canvas.Scene.Polyline(ring, true, Pen, Layers.EquipmentClear, group);
                }

                var box = canvas.Transform.ToPaper(clear.Floor.EnvelopeInternal);
                string purpose = SafeText.Clean(clear.Purpose, LongestPurpose);
                if (purpose.Length > 0)
                {
                    canvas.Labels.Add(new LabelRequest
                    {
                        Id = group,
                        Lines = Lines(purpose, box.Width - 2),
                        Target = box,
                        Positions =
                            [
                                LabelPosition.Inside, LabelPosition.InsideBottomLeft, LabelPosition.InsideBottomRight,
                                LabelPosition.InsideTopLeft, LabelPosition.InsideTopRight],
                        Priority = LabelPriority.Clear,
                        CapHeight = Standard.SmallestHeight,
                        SmallestCapHeight = Standard.SmallestHeight,
                        MayTurn = box.Height > box.Width,
                        MayLead = false,
                        Optional = true,
                        ListedUnder = SafeText.Clean(station.Caption, LongestPurpose),
                        Within = box,
                        Group = group,
                    });
                }
            }
        }
    }

    /// <summary>No word is broken: where one is too long the text finds no room here, and is listed.</summary>
    private IReadOnlyList<string> Lines(string purpose, double width)
        => purpose.Split(' ').All(word => TextMeasure.Width(word, Standard.SmallestHeight) <= width)
            ? TextWrap.Lines(purpose, width, Standard.SmallestHeight)
            : [purpose];
}
