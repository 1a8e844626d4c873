using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Symbols;
using Floorplan.Drawing.Views;
using Floorplan.Language.Quantities;
using Floorplan.Model.Shapes;
using Floorplan.Sizing;
using Floorplan.Sizing.Drainage;

namespace Floorplan.Drawing.Sheets.WaterAndDrainage;

/// <summary>Levels of floors with a fall: at their corners, their highest place and their drains.</summary>
public sealed class LevelLayer(PlanFacts facts) : PlanLayer(facts.Plan)
{
    /// <summary>Marks stand this far in from their corner, towards the middle of the room, so that walls do not hide them.</summary>
    private const double FromCorner = 2.2;

    /// <summary>A level that is led farther is read at the wrong mark, mm; own choice.</summary>
    private const double FarthestText = 12;

    private readonly IReadOnlyList<FloorLevel> levels = [.. facts.Drainage.Values.SelectMany(d => d.Levels)];

    public override IEnumerable<LegendEntry> Legend => levels.Count > 0
        ? [new LegendEntry(
            "level of the finished floor", (scene, box)
                => LevelMarkSymbol.Draw(new SymbolBrush(scene, Standard, Layers.Legend), box.Centre))]
        : [];

    public override void Draw(PlanCanvas canvas)
    {
        for (int i = 0; i < levels.Count; i++)
        {
            var level = levels[i];
            string group = FormattableString.Invariant($"level:{level.Room.Id}:{i}");
            var at = canvas.Transform.ToPaper(level.At);
            var place = new PlanPoint(Length.FromMillimetres(level.At.X), Length.FromMillimetres(level.At.Y)) - Plan.Shell.Datum;
            if (level.Drain is null)
            {
                at += PaperShapes.Times(
                    PaperShapes.Towards(at, canvas.Transform.ToPaper(level.Room.Floor.InteriorPoint.Coordinate)), FromCorner);
                LevelMarkSymbol.Draw(canvas.Brush(Layers.Drainage, group, Band.Annotation), at);
            }

            canvas.Labels.Add(new LabelRequest
            {
                Id = group,
                Lines = [level.Level.Text],
                Figures = [level.Level],
                Target = PaperBox.Around(at, 3, 3),
                Positions = LabelSides.AllRound,
                Priority = LabelPriority.Level,
                CapHeight = Standard.NoteHeight,
                SmallestCapHeight = Standard.SmallestHeight,
                LeadTo = at,
                LongestLeader = FarthestText,
                Optional = true,
                ListedUnder = $"level at X {canvas.Tape.Cell(place.X)}, Y {canvas.Tape.Cell(place.Y)}",
                Layer = Layers.Drainage,
                Group = group,
            });
        }
    }
}
