using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Sheets;
using Floorplan.Drawing.Symbols;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Comparing;
using Floorplan.Model.Shapes;
using NetTopologySuite.Geometries;

namespace Floorplan.Drawing.Views.Findings;

/// <summary>Clouds round what changed since another revision, each with its number; what vanished is outlined where it was.</summary>
internal sealed class RevisionLayer(Plan plan, IReadOnlyList<PlanChange> changes) : PlanLayer(plan)
{
    /// <summary>The cloud stands off what it marks, paper mm.</summary>
    private const double Clearance = 1;

    /// <summary>A point is clouded as if it were this large, paper mm.</summary>
    private const double Smallest = 4;

    public override Envelope Extent
    {
        get
        {
            var extent = new Envelope();
            foreach (var box in Placed.Select(p => p.Box))
            {
                extent.ExpandToInclude(box.ToPolygon().EnvelopeInternal);
            }

            return extent;
        }
    }

    public override IEnumerable<LegendEntry> Legend => Placed.Any()
        ? [new LegendEntry(
            "changed, see the list", (scene, box)
                => RevisionCloudSymbol.Draw(new SymbolBrush(scene, Standard, Layers.Legend), box.Grown(-2), Pen))]
        : [];

    /// <summary>The layer, when there is anything to compare with.</summary>
    public static IEnumerable<PlanLayer> For(SheetRequest request)
        => request.Changes.Count > 0 ? [new RevisionLayer(request.Plan, request.Changes)] : [];

    /// <summary>The list that the numbers of the clouds refer to.</summary>
    public static IEnumerable<KeyTable> Table(SheetRequest request) => request.Changes.Count > 0
        ? [new KeyTable(
            request.Since.Length > 0 ? $"Changes since {request.Since}" : "Changes",
            ["No", "What changed"],
            [.. request.Changes.Select((c, i) => (IReadOnlyList<Cell>)[FormattableString.Invariant($"#{i + 1}"), c.Text])])]
        : [];

    private Pen Pen => new(Standard.Text, Palette.Blue);

    private IEnumerable<(int Number, PlanChange Change, Box Box)> Placed => changes
        .Select((c, i) => (Number: i + 1, Change: c, Box: c is { Thing: "room", Was: { } was, Is: { } now }
            ? Strip(was, now)
            : c.Is ?? c.Was))
        .Where(p => p.Box is not null)
        .Select(p => (p.Number, p.Change, p.Box!.Value));

    /// <summary>Of a room that grew or shrank the strip of floor that it won or lost; null where its outline stayed.</summary>
    private static Box? Strip(Box was, Box now)
    {
        var changed =
            Overlays.Sum(
                [Overlays.Less(was.ToPolygon(), now.ToPolygon()), Overlays.Less(now.ToPolygon(), was.ToPolygon())]).EnvelopeInternal;
        return changed.IsNull
            ? null
            : new Box(
                Length.FromMillimetres(changed.MinX), Length.FromMillimetres(changed.MinY), Length.FromMillimetres(changed.MaxX),
                Length.FromMillimetres(changed.MaxY));
    }

    public override void Draw(PlanCanvas canvas)
    {
        foreach (var (number, change, place) in Placed)
        {
            string group = FormattableString.Invariant($"change:{number}");
            var thing = canvas.Transform.ToPaper(place);
            var brush = canvas.Brush(Layers.Finding, group, Band.Annotation);
            if (change.Kind == ChangeKind.Vanished)
            {
                brush.Box(thing, new Pen(Standard.Narrow, Palette.Blue, Dashes.Dashed(Standard.Narrow)));
            }

            var cloud = PaperBox.Around(thing.Centre, Math.Max(thing.Width, Smallest), Math.Max(thing.Height, Smallest)).Grown(Clearance);
            RevisionCloudSymbol.Draw(brush, cloud, Pen);
            canvas.Labels.Add(new LabelRequest
            {
                Id = group,
                Lines = [FormattableString.Invariant($"#{number}")],
                Target = cloud.Grown(2),
                Positions = LabelSides.AllRound,
                Priority = LabelPriority.Finding,
                CapHeight = Standard.NoteHeight,
                Bold = true,
                LeadTo = thing.Centre,
                Layer = Layers.Finding,
                Colour = Palette.BlueText,
                Group = group,
            });
        }
    }
}
