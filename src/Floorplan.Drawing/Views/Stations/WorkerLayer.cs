using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Symbols;
using Floorplan.Model;
using Floorplan.Model.Shapes;
using Floorplan.Model.Stations;

namespace Floorplan.Drawing.Views.Stations;

/// <summary>Where people stand, facing their station.</summary>
public sealed class WorkerLayer(Plan plan) : PlanLayer(plan)
{
    private const double SampleShoulders = 9;

    public override IEnumerable<LegendEntry> Legend => Plan.Stations.Any(s => s.Workers.Count > 0)
        ? [new LegendEntry("worker, facing the work", (scene, box) =>
            WorkerSymbol.Draw(
                new SymbolBrush(scene, Standard, Layers.Legend), box.Centre, new(0, -1), Math.Min(SampleShoulders, box.Width)))]
        : [];

    public override void Draw(PlanCanvas canvas)
    {
        double shoulders = canvas.Transform.Size(WorkerSize.Width);
        foreach (var station in Plan.Stations)
        {
            foreach (var worker in station.Workers)
            {
                var brush = canvas.Brush(Layers.Worker, FormattableString.Invariant($"worker:{station.Id}:{worker.Number}"));
                WorkerSymbol.Draw(brush, canvas.Transform.ToPaper(worker.Centre), worker.Stands.Opposite().Direction(), shoulders);
            }
        }
    }
}
