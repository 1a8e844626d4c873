using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Symbols;
using Floorplan.Model;
using NetTopologySuite.Geometries;

namespace Floorplan.Drawing.Views.Flows;

/// <summary>
/// The real route of every leg as an arrow: line type, colour and letter of its stream, with its number in the table of legs.
/// </summary>
public sealed class FlowLayer(Plan plan, IReadOnlyList<FlowLeg> legs) : PlanLayer(plan)
{
    private const double LanePitch = 1.8;
    private const double HeadLength = 3.2;

    /// <summary>Longer legs also get arrowheads on the way.</summary>
    private const double HeadEvery = 45;

    /// <summary>Legs whose ends are nearer than this, in plan mm, follow each other.</summary>
    private const double OneStep = 50;

    public override Envelope Extent
    {
        get
        {
            var extent = new Envelope();
            foreach (var leg in legs.Where(l => l.Route.Route is not null))
            {
                extent.ExpandToInclude(leg.Route.Route!.Path.EnvelopeInternal);
            }

            return extent;
        }
    }

    public override IEnumerable<LegendEntry> Legend => legs.Select(l => l.Route.Flow.Stream).Distinct().Order().Select(stream =>
    {
        var look = StreamLook.Of(stream);
        return new LegendEntry($"{look.Letter}  {look.Name}", (scene, box) =>
            Arrow(
                new SymbolBrush(scene, Standard, Layers.Legend) { Colour = look.Pen.Colour }, look.Pen,
                [new(box.Left, box.Centre.Y), new(box.Right, box.Centre.Y)]));
    });

    public override void Draw(PlanCanvas canvas)
    {
        var lanes = new RouteLanes(LanePitch);
        foreach (var chain in Chains())
        {
            // One lane for all legs that follow each other, so that the arrows join.
            var points = new List<PaperPoint>();
            var starts = new List<int>();
            foreach (var leg in chain)
            {
                starts.Add(points.Count);
                points.AddRange(leg.Way.Select(canvas.Transform.ToPaper));
            }

            var laid = lanes.Lay(points);
            for (int i = 0; i < chain.Count; i++)
            {
                int end = i + 1 < chain.Count ? starts[i + 1] : laid.Count;
                Draw(canvas, chain[i], [.. laid.Skip(starts[i]).Take(end - starts[i])]);
            }
        }
    }

    private static void Draw(PlanCanvas canvas, FlowLeg leg, IReadOnlyList<PaperPoint> path)
    {
        var look = StreamLook.Of(leg.Route.Flow.Stream);
        string group = "leg:" + leg.Mark;
        Arrow(canvas.Brush(Layers.Flow, group, Band.Flow) with { Colour = look.Pen.Colour }, look.Pen, path);
        Label(canvas, leg, path, group);
    }

    /// <summary>Runs of legs that follow each other without a gap.</summary>
    private IEnumerable<IReadOnlyList<FlowLeg>> Chains()
    {
        var chain = new List<FlowLeg>();
        foreach (var leg in legs.Where(l => l.Route.Route is not null))
        {
            if (chain.Count > 0 && !Follows(chain[^1], leg))
            {
                yield return chain;
                chain = [];
            }

            chain.Add(leg);
        }

        if (chain.Count > 0)
        {
            yield return chain;
        }
    }

    private static bool Follows(FlowLeg last, FlowLeg next) =>
        ReferenceEquals(last.Route.Flow, next.Route.Flow) && last.Way[^1].Distance(next.Way[0]) < OneStep;

    private static void Arrow(SymbolBrush brush, Pen pen, IReadOnlyList<PaperPoint> path)
    {
        double length = Enumerable.Range(0, path.Count - 1).Sum(i => PaperShapes.Length(path[i + 1] - path[i]));
        var (tip, direction) = Along(path, length);
        double head = Math.Min(HeadLength, length);
        if (length > head)
        {
            // The line ends inside the head, so that its blunt end does not show.
            brush.Path(pen, Cut(path, length - (head * 0.8)));
        }

        ArrowheadSymbol.Filled(brush, tip, direction, head);
        for (double at = HeadEvery; at < length - (HeadEvery / 2); at += HeadEvery)
        {
            var (on, towards) = Along(path, at);
            ArrowheadSymbol.Filled(brush, on, towards, head);
        }
    }

    private static void Label(PlanCanvas canvas, FlowLeg leg, IReadOnlyList<PaperPoint> path, string group)
    {
        int longest = Enumerable.Range(0, path.Count - 1).MaxBy(i => PaperShapes.Length(path[i + 1] - path[i]));
        var middle = PaperShapes.Between(path[longest], path[longest + 1], 0.5);
        canvas.Labels.Add(new LabelRequest
        {
            Id = group,
            Lines = leg.Note.Length == 0 ? [leg.Mark] : [leg.Mark + " " + leg.Note],
            Target = PaperBox.Around(middle, 1.4, 1.4),
            Positions = LabelSides.AllRound,
            Priority = LabelPriority.Stream,
            CapHeight = canvas.Standard.NoteHeight,
            SmallestCapHeight = leg.Note.Length == 0 ? canvas.Standard.TagHeight : canvas.Standard.SmallestHeight,
            Short = leg.Note.Length == 0 ? null : leg.Mark,
            Bold = true,
            LeadTo = middle,
            Layer = Layers.Flow,
            Group = group,
        });
    }

    private static (PaperPoint At, PaperPoint Direction) Along(IReadOnlyList<PaperPoint> path, double distance)
    {
        for (int i = 0; i + 1 < path.Count; i++)
        {
            double length = PaperShapes.Length(path[i + 1] - path[i]);
            if (distance <= length && length > 0)
            {
                return (PaperShapes.Between(path[i], path[i + 1], distance / length), PaperShapes.Towards(path[i], path[i + 1]));
            }

            distance -= length;
        }

        int last = path.Count - 2;
        while (last > 0 && path[last] == path[^1])
        {
            last--;
        }

        return (path[^1], PaperShapes.Towards(path[last], path[^1]));
    }

    private static List<PaperPoint> Cut(IReadOnlyList<PaperPoint> path, double length)
    {
        var kept = new List<PaperPoint> { path[0] };
        for (int i = 0; i + 1 < path.Count; i++)
        {
            double piece = PaperShapes.Length(path[i + 1] - path[i]);
            if (length <= piece)
            {
                kept.Add(piece == 0 ? path[i + 1] : PaperShapes.Between(path[i], path[i + 1], length / piece));
                break;
            }

            kept.Add(path[i + 1]);
            length -= piece;
        }

        return kept;
    }
}
