using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Symbols;
using Floorplan.Model;
using NetTopologySuite.Geometries;

namespace Floorplan.Drawing.Views.Findings;

/// <summary>Marks findings by their numbers; those of one place share a mark.</summary>
public sealed class FindingLayer(Plan plan, IReadOnlyList<MarkedFinding> findings) : PlanLayer(plan)
{
    private const int MostRoundOneMark = 4;
    private const int NumbersPerLine = 5;

    /// <summary>Marks nearer than this on paper, mm, would cover each other.</summary>
    private const double OnePlace = 3;

    public override Envelope Extent
    {
        get
        {
            // A finding far outside must not push the plan off its own sheet; its number stays in the list.
            var reach = Plan.Shell.Outside.EnvelopeInternal.Copy();
            reach.ExpandBy(MarkedFinding.FarthestOutside);
            var extent = new Envelope();
            foreach (var finding in findings.Where(f => f.Finding.At is { } at && reach.Covers(at)))
            {
                extent.ExpandToInclude(finding.Finding.At);
            }

            return extent;
        }
    }

    public override IEnumerable<LegendEntry> Legend => findings.Any(f => f.Finding.At is not null)
        ? [new LegendEntry(
            "finding, see the list", (scene, box) => FindingMarkSymbol.Draw(new SymbolBrush(scene, Standard, Layers.Legend), box.Centre))]
        : [];

    public override void Draw(PlanCanvas canvas)
    {
        var reach = Plan.Shell.Outside.EnvelopeInternal.Copy();
        reach.ExpandBy(MarkedFinding.FarthestOutside);
        var marked = findings.Where(f => f.Finding.At is { } at && reach.Covers(at));
        foreach (var place in marked.GroupBy(f => Cell(canvas.Transform.ToPaper(f.Finding.At!))))
        {
            var at = canvas.Transform.ToPaper(place.First().Finding.At!);
            string group = FormattableString.Invariant($"finding:{place.First().Number}");
            FindingMarkSymbol.Draw(canvas.Brush(Layers.Finding, group, Band.Annotation), at);
            Label(canvas, [.. place.Select(f => f.Number)], at);
        }
    }

    private void Label(PlanCanvas canvas, IReadOnlyList<int> numbers, PaperPoint at)
    {
        // A few numbers stand round their mark, many share one tag.
        bool few = numbers.Count <= MostRoundOneMark;
        foreach (int[] tag in few ? numbers.Select(n => new[] { n }) : [[.. numbers]])
        {
            string group = FormattableString.Invariant($"finding:{tag[0]}");
            canvas.Labels.Add(new LabelRequest
            {
                Id = group,
                Lines = [.. tag.Select(n => FormattableString.Invariant($"{n}")).Chunk(NumbersPerLine).Select(c => string.Join(", ", c))],
                Target = PaperBox.Around(at, 2 * FindingMarkSymbol.Radius, 2 * FindingMarkSymbol.Radius),
                Positions = LabelSides.AllRound,
                Priority = LabelPriority.Finding,
                CapHeight = Standard.NoteHeight,
                SmallestCapHeight = Standard.SmallestHeight,
                Bold = true,
                Tag = few ? TagShape.Diamond : TagShape.Box,
                LeadTo = at,
                Layer = Layers.Finding,
                Group = group,
            });
        }
    }

    private static (long X, long Y) Cell(PaperPoint at) => ((long)Math.Round(at.X / OnePlace), (long)Math.Round(at.Y / OnePlace));
}
