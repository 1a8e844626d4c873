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
            var extent = new Envelope();
            foreach (var finding in Marked)
            {
                extent.ExpandToInclude(finding.Finding.At);
            }

            return extent;
        }
    }

    /// <summary>A finding far outside must not push the plan off its own sheet; its number stays in the list.</summary>
    private IEnumerable<MarkedFinding> Marked
    {
        get
        {
            var reach = Plan.Shell.Outside.EnvelopeInternal.Copy();
            reach.ExpandBy(MarkedFinding.FarthestOutside);
            return findings.Where(f => f.Finding.At is { } at && reach.Covers(at));
        }
    }

    public override IEnumerable<LegendEntry> Legend => FindingLook.All
        .Where(look => Marked.Any(f => FindingLook.Of(f.Finding) == look))
        .Select(look => look.Legend(Standard));

    public override void Draw(PlanCanvas canvas)
    {
        foreach (var place in Marked.GroupBy(f => Cell(canvas.Transform.ToPaper(f.Finding.At!))))
        {
            var at = canvas.Transform.ToPaper(place.First().Finding.At!);
            string group = FormattableString.Invariant($"finding:{place.First().Number}");
            double filled = place.Max(f => FindingLook.Of(f.Finding).Filled);
            FindingMarkSymbol.Draw(canvas.Brush(Layers.Finding, group, Band.Annotation), at, filled);
            Label(canvas, [.. place], at);
        }
    }

    private void Label(PlanCanvas canvas, IReadOnlyList<MarkedFinding> found, PaperPoint at)
    {
        // A few numbers stand round their mark, many share one tag.
        bool few = found.Count <= MostRoundOneMark;
        foreach (MarkedFinding[] tag in few ? found.Select(f => new[] { f }) : [[.. found]])
        {
            string group = FormattableString.Invariant($"finding:{tag[0].Number}");
            canvas.Labels.Add(new LabelRequest
            {
                Id = group,
                Lines =
                [
                    .. tag.Select(f => FormattableString.Invariant($"{f.Number}")).Chunk(NumbersPerLine).Select(c => string.Join(", ", c)),
                ],
                Target = PaperBox.Around(at, 2 * FindingMarkSymbol.Radius, 2 * FindingMarkSymbol.Radius),
                Positions = LabelSides.AllRound,
                Priority = LabelPriority.Finding,
                CapHeight = Standard.NoteHeight,
                SmallestCapHeight = Standard.TagHeight,
                Bold = true,
                Tag = few ? FindingLook.Of(tag[0].Finding).Balloon : TagShape.Box,
                LeadTo = at,
                Layer = Layers.Finding,
                Group = group,
            });
        }
    }

    private static (long X, long Y) Cell(PaperPoint at) => ((long)Math.Round(at.X / OnePlace), (long)Math.Round(at.Y / OnePlace));
}
