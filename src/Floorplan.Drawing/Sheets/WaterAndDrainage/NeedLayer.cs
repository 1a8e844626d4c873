using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Views;
using Floorplan.Model;
using Floorplan.Model.Stations;

namespace Floorplan.Drawing.Sheets.WaterAndDrainage;

/// <summary>Beside every wet station: how much cold and hot water it needs, and that it drains.</summary>
public sealed class NeedLayer(Plan plan) : PlanLayer(plan)
{
    private const int LongestName = 40;

    public override void Draw(PlanCanvas canvas)
    {
        foreach (var station in Plan.Stations.Where(s => s.IsWet))
        {
            var box = canvas.Transform.ToPaper(station.Bounds);
            canvas.Labels.Add(new LabelRequest
            {
                Id = "need:" + station.Id,
                Lines = [.. Lines(station)],
                Target = box,
                Positions =
                [
                    LabelPosition.Inside, LabelPosition.InsideTopRight, LabelPosition.InsideBottomRight, LabelPosition.InsideBottomLeft, LabelPosition.InsideTopLeft,
                    .. LabelSides.AllRound,
                ],
                Priority = LabelPriority.Need,
                CapHeight = Standard.SmallestHeight,
                SmallestCapHeight = Standard.SmallestHeight,
                LeadTo = box.Centre,
                Optional = true,
                ListedUnder = SafeText.Clean(station.Caption, LongestName),
                Layer = Layers.Water,
                Group = "station:" + station.Id,
            });
        }
    }

    private IEnumerable<string> Lines(Station station)
    {
        foreach (var kind in Enum.GetValues<PipeKind>().Where(k => PipeRuns.Needs(station, k)))
        {
            string amount = NeedText.Of(station, kind, Plan.Units);
            yield return amount == "yes" ? PipeLook.Of(kind).Letters : PipeLook.Of(kind).Letters + " " + amount;
        }
    }
}
