using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Views;
using Floorplan.Model.Stations;
using Floorplan.Sizing;
using Floorplan.Sizing.Uses;

namespace Floorplan.Drawing.Sheets.WaterAndDrainage;

/// <summary>
/// In or beside every wet station, where there is room: how much cold and hot water it needs, and that it drains. The table of uses says
/// all of it.
/// </summary>
public sealed class NeedLayer(PlanFacts facts) : PlanLayer(facts.Plan)
{
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
                MayLead = false,
                OffOthers = true,
                Optional = true,
                Layer = Layers.Water,
                Group = "station:" + station.Id,
            });
        }
    }

    private IEnumerable<string> Lines(Station station) => PipeLook.Piped.SelectMany(kind => facts.Uses.By(station, kind))
        .Select(use => $"{PipeLook.Of(use.Kind).Letters} {UseText.Amount(use, Plan.Units)}".TrimEnd());
}
