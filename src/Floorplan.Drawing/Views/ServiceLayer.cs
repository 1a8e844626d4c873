using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Symbols;
using Floorplan.Drawing.Symbols.Services;
using Floorplan.Model;
using Floorplan.Model.Services;
using Floorplan.Model.Shapes;

namespace Floorplan.Drawing.Views;

/// <summary>Service points of one sheet, or of all when null, each with its mark.</summary>
public sealed class ServiceLayer(Plan plan, ServiceSheet? sheet = null) : PlanLayer(plan)
{
    private const int LongestCircuit = 8;
    private const double LabelReach = 4;

    public override IEnumerable<LegendEntry> Legend =>
        Shown.Select(ServiceSymbols.NameOf).Distinct().Order(StringComparer.Ordinal).Select(name =>
        {
            var first = Shown.First(s => ServiceSymbols.NameOf(s) == name);
            return new LegendEntry(name, (scene, box) =>
                ServiceSymbols.Draw(
                    new SymbolBrush(scene, Standard, Layers.Legend), first with { Wall = null }, box.Centre, ServiceSymbols.Smallest));
        });

    private IEnumerable<ServicePoint> Shown => ServiceSymbols.On(sheet, Plan);

    public static string Mark(ServicePoint service) => Marks.Of(service.Id);

    public override void Draw(PlanCanvas canvas)
    {
        foreach (var service in Shown)
        {
            string group = "service:" + service.Id;
            var at = canvas.Transform.ToPaper(service.At);
            double size = service is ISizedPoint { Size: { } real }
                ? Math.Max(ServiceSymbols.Smallest, canvas.Transform.Size(real))
                : ServiceSymbols.Smallest;
            var drawnAt = ServiceSymbols.Draw(canvas.Brush(ServiceSymbols.LayerOf(service), group, Band.Annotation), service, at, size);
            canvas.Labels.Add(new LabelRequest
            {
                Id = group,
                Lines = service is CircuitPoint { Circuit.Length: > 0 } wired
                    ? [.. Marks.Lines(Mark(service)), "circuit " + SafeText.Clean(wired.Circuit, LongestCircuit)]
                    : Marks.Lines(Mark(service)),
                KeyText = Mark(service),
                Target = PaperBox.Around(drawnAt, LabelReach, LabelReach),
                Positions = service.Wall is { } wall ? wall.Opposite().LabelsOn() : LabelSides.AllRound,
                Priority = LabelPriority.Service,
                CapHeight = Standard.NoteHeight,
                SmallestCapHeight = Standard.TagHeight,
                Tag = TagShape.Capsule,
                LeadTo = drawnAt,
                Group = group,
            });
        }
    }
}
