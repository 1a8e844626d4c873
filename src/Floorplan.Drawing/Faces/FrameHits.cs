using Floorplan.Checks.Findings;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Views;
using Floorplan.Drawing.Views.Findings;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Shells;
using Floorplan.Sizing;

namespace Floorplan.Drawing.Faces;

/// <summary>
/// Holes that go into a post, rail or casting, by the findings that stand. They are crossed out on the sheet, and no cutting file is made
/// of their wall: whoever has the file would cut the frame.
/// </summary>
public sealed class FrameHits(IReadOnlyList<Finding> findings)
{
    private const string Rule = "cuts-frame";

    /// <summary>The cross reaches so far beyond the hole, mm of paper, that it is not taken for a part of its frame; own choice.</summary>
    private const double Beyond = 1.5;

    private readonly Dictionary<string, MarkedFinding> hits = MarkedFinding.NumberAll(findings)
        .Where(f => f.Finding is { Rule: Rule, Severity: Severity.Error, AcceptedBy: null })
        .SelectMany(f => f.Finding.Things.Select(id => (Id: id, Found: f)))
        .DistinctBy(f => f.Id)
        .ToDictionary(f => f.Id, f => f.Found);

    /// <summary>Walls with such a hole, and the findings that stand.</summary>
    public IReadOnlyList<(ShellWall Wall, IReadOnlyList<MarkedFinding> Findings)> Walls(PlanFacts facts) =>
    [
        .. facts.CutOuts.Select(c => (c.Wall, c.Opening.Id))
            .Concat(facts.Holes.Where(h => h.Wall is not null).Select(h => (Wall: h.Wall!, h.Point.Id)))
            .Where(h => hits.ContainsKey(h.Id))
            .GroupBy(h => h.Wall, h => hits[h.Id])
            .Select(w => (w.Key, (IReadOnlyList<MarkedFinding>)[.. w.OrderBy(f => f.Number)])),
    ];

    /// <summary>What a welder reads of them; none when no hole goes into the frame.</summary>
    internal IEnumerable<string> Notes => hits.Count == 0
        ? []
        : ["Crossed out: DO NOT CUT. The hole goes into a post, rail or casting, see the finding of that number. Move it or have it "
            + "accepted by an engineer first; until then there is no cutting file of its wall."];

    internal IEnumerable<LegendEntry> Legend(DrawingStandard standard) => hits.Count == 0
        ? []
        : [new LegendEntry(
            "crossed out: do not cut", (scene, box) => Cross(scene, PaperBox.Around(box.Centre, 6, 2), standard, Layers.Legend))];

    /// <summary>Crosses out the hole of a thing, when it goes into the frame, and says so beside it.</summary>
    internal void Draw(ViewCanvas canvas, PaperBox hole, string id, DrawingStandard standard)
    {
        if (!hits.TryGetValue(id, out var hit))
        {
            return;
        }

        string group = "do-not-cut:" + id;
        Cross(canvas.Scene, hole, standard, Layers.Finding, group);
        canvas.Labels.Add(new LabelRequest
        {
            Id = group,
            Lines = ["DO NOT CUT", FormattableString.Invariant($"finding {hit.Number}")],
            Target = PaperBox.Around(hole.Centre, hole.Width + (2 * Beyond), hole.Height + (2 * Beyond)),
            Positions = [LabelPosition.Right, LabelPosition.Left, LabelPosition.Above, LabelPosition.AboveRight, LabelPosition.AboveLeft],
            Priority = LabelPriority.Finding,
            CapHeight = standard.NoteHeight,
            SmallestCapHeight = standard.SmallestHeight,
            Bold = true,
            Tag = TagShape.Box,
            Layer = Layers.Finding,
            Group = group,
        });
    }

    private static void Cross(SceneBuilder scene, PaperBox hole, DrawingStandard standard, string layer, string? group = null)
    {
        var pen = new Pen(standard.Wide);
        var box = PaperBox.Around(hole.Centre, hole.Width + (2 * Beyond), hole.Height + (2 * Beyond));
        scene.Line(new(box.Left, box.Bottom), new(box.Right, box.Top), pen, layer, group);
        scene.Line(new(box.Left, box.Top), new(box.Right, box.Bottom), pen, layer, group);
    }
}
