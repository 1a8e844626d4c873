using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Views;
using Floorplan.Model.Stations;
using Floorplan.Sizing;
using Floorplan.Sizing.Uses;

namespace Floorplan.Drawing.Sheets.WaterAndDrainage;

/// <summary>Beside every wet station: how much cold and hot water it needs, and that it drains.</summary>
public sealed class NeedLayer(PlanFacts facts) : PlanLayer(facts.Plan)
{
    private const int LongestName = 40;

    public override void Draw(PlanCanvas canvas)
    {
        foreach (var station in Plan.Stations.Where(facts.Uses.IsWet))
        {
            var box = canvas.Transform.ToPaper(station.Bounds);
            canvas.Labels.Add(new LabelRequest
            {
                Id = "need:" + station.Id,
                Lines = [.. Lines(station)],
                Target = box,
                Positions =
                [
                    LabelPosition.Inside, LabelPosition.InsideTopRight, LabelPosition.InsideBottomRight, LabelPosition.InsideBottomLeft,
                    LabelPosition.InsideTopLeft,
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

    private IEnumerable<string> Lines(Station station) => PipeLook.Piped.SelectMany(kind => facts.Uses.By(station, kind))
        .Select(use => $"{PipeLook.Of(use.Kind).Letters} {UseText.Amount(use, Plan.Units)}".TrimEnd());
}
