using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Symbols;
using Floorplan.Drawing.Views;
using Floorplan.Language.Syntax;
using Floorplan.Model.Services;
using Floorplan.Model.Stations;
using Floorplan.Sizing;

namespace Floorplan.Drawing.Sheets.WaterAndDrainage;

/// <summary>Runs as diagrams, lettered along their length: cold, hot, waste, and which way each drain leaves.</summary>
public sealed class PipeLayer(PlanFacts facts, IReadOnlyList<PipeRun> runs) : PlanLayer(facts.Plan)
{
    private readonly PipeSizes sizes = new(facts);

    /// <summary>A run is lettered at least this often on paper, mm.</summary>
    private const double LetterEvery = 60;

    /// <summary>Shorter pieces are not lettered.</summary>
    private const double ShortestLettered = 14;

    /// <summary>Where letters may stand along their stretch when they are not clear in the middle of it.</summary>
    private static readonly double[] Shares = [0.4, 0.6, 0.3, 0.7, 0.2, 0.8];

    private const double EndDot = 0.5;
    private const double OutletPast = 5;
    private const double HeadLength = 2.5;

    public override IEnumerable<LegendEntry> Legend
    {
        get
        {
            var kinds = runs.Select(r => r.Kind).ToHashSet();
            if (Plan.Services.OfType<Drain>().Any())
            {
                kinds.Add(NeedKind.Drain);
            }

            return PipeLook.Piped.Where(kinds.Contains).Select(kind =>
            {
                var look = PipeLook.Of(kind);
                return new LegendEntry($"{look.Letters}  {look.Name}", (scene, box) =>
                    scene.Line(new(box.Left, box.Centre.Y), new(box.Right, box.Centre.Y), look.Pen, Layers.Legend));
            });
        }
    }

    public override void Draw(PlanCanvas canvas)
    {
        foreach (var run in runs)
        {
            var look = PipeLook.Of(run.Kind);
            string group = $"pipe:{look.Letters}:{run.Point.Id}";
            var brush =
                canvas.Brush(run.Kind == NeedKind.Drain
                    ? Layers.Drainage
                    : Layers.Water, group, Band.Flow) with
                { Colour = look.Pen.Colour };
            var lines = PipePaths.Of(run, canvas.Transform);
            for (int i = 0; i < lines.Count; i++)
            {
                var (from, to, trunk, use) = lines[i];
                brush.Line(from, to, look.Pen);
                if (!trunk)
                {
                    // A dot joins a branch to its trunk and ends it in its station.
                    brush.Disc(to, EndDot);
                }

                string letters = use is not null ? Letters(look, sizes.Of(run.Kind, run.Point, use))
                    : trunk && run.Kind != NeedKind.Drain ? Letters(look, sizes.Of(run.Kind, run.Point)) : look.Letters;
                Letter(canvas, look, letters, from, to, FormattableString.Invariant($"{group}:{i}"), group);
            }
        }

        foreach (var drain in Plan.Services.OfType<Drain>())
        {
            DrawOutlet(canvas, drain);
        }
    }

    /// <summary>The shortest way out under the floor, square to a wall.</summary>
    private void DrawOutlet(PlanCanvas canvas, Drain drain)
    {
        var look = PipeLook.Of(NeedKind.Drain);
        string group = "pipe:outlet:" + drain.Id;
        var from = canvas.Transform.ToPaper(drain.At);
        var shell = canvas.Transform.ToPaper(Plan.Shell.Outside.EnvelopeInternal);
        var (side, distance) = new (Side Side, double Distance)[]
        {
            (Side.South, shell.Bottom - from.Y),
            (Side.North, from.Y - shell.Top),
            (Side.West, from.X - shell.Left),
            (Side.East, shell.Right - from.X),
        }.MinBy(s => s.Distance);
        var direction = side.Direction();
        var tip = from + PaperShapes.Times(direction, Math.Max(distance, 0) + OutletPast);
        var brush = canvas.Brush(Layers.Drainage, group, Band.Flow);
        brush.Line(from, tip - PaperShapes.Times(direction, HeadLength * 0.8), look.Pen);
        ArrowheadSymbol.Filled(brush, tip, direction, HeadLength);
        Letter(canvas, look, Letters(look, sizes.Of(drain)), from, tip, group, group);
    }

    /// <summary>What it carries, and its size: <c>CW 20</c>.</summary>
    private static string Letters(PipeLook look, string size) => size.Length > 0 ? $"{look.Letters} {size}" : look.Letters;

    private static void Letter(PlanCanvas canvas, PipeLook look, string letters, PaperPoint from, PaperPoint to, string id, string group)
    {
        double length = PaperShapes.Length(to - from);
        int times = length < ShortestLettered ? 0 : (int)Math.Ceiling(length / LetterEvery);
        for (int i = 0; i < times; i++)
        {
            PaperBox At(double share) => PaperBox.Around(PaperShapes.Between(from, to, (i + share) / times), 1, 1);
            canvas.Labels.Add(new LabelRequest
            {
                Id = FormattableString.Invariant($"{id}:{i}"),
                Lines = [letters],
                Target = At(0.5),
                OtherTargets = [.. Shares.Select(At)],
                Positions = from.X == to.X ? [.. Side.East.LabelsOn()] : LabelSides.AllRound,
                Priority = LabelPriority.Pipe,
                CapHeight = canvas.Standard.TagHeight,
                SmallestCapHeight = canvas.Standard.TagHeight,
                Bold = true,
                MayLead = false,
                MostCuts = 0,
                Optional = true,
                Layer = look == PipeLook.Of(NeedKind.Drain) ? Layers.Drainage : Layers.Water,
                Group = group,
            });
        }
    }
}
