using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Views;
using Floorplan.Sizing;
using Floorplan.Sizing.Uses;

namespace Floorplan.Drawing.Sheets.PowerLightAir;

/// <summary>Beside every machine: what it draws, as written in the plan.</summary>
internal sealed class PowerNeedLayer(PlanFacts facts) : PlanLayer(facts.Plan)
{
    public override void Draw(PlanCanvas canvas)
    {
        foreach (var uses in facts.Power.Uses.Where(u => u.Station is not null).GroupBy(u => u.Station!))
        {
            var station = uses.Key;
            var box = canvas.Transform.ToPaper(station.Bounds);
            canvas.Labels.Add(new LabelRequest
            {
                Id = "power:" + station.Id,
                Lines = [.. uses.Select(u => UseText.AmountOrKind(u, Plan.Units))],
                Target = box,
                Positions = [LabelPosition.Inside, LabelPosition.InsideBottomRight, LabelPosition.InsideBottomLeft, .. LabelSides.AllRound],
                Priority = LabelPriority.Need,
                CapHeight = Standard.SmallestHeight,
                SmallestCapHeight = Standard.SmallestHeight,
                LeadTo = box.Centre,
                Optional = true,
                Layer = Layers.Power,
                Group = "station:" + station.Id,
            });
        }
    }
}
