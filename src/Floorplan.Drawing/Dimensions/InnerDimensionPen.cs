using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Labels.Drawn;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Quantities;
using Floorplan.Model.Shapes;

namespace Floorplan.Drawing.Dimensions;

/// <summary>
/// Draws dimensions inside a view, along x or y, each where its text and its line are clear: first at the place asked for, then a
/// little to the side, step by step. Call when everything fixed is drawn.
/// </summary>
/// <param name="area">The paper of the view.</param>
internal sealed class InnerDimensionPen(
    SceneBuilder scene, PlanTransform transform, PaperBox area, Tape tape, DrawingStandard standard)
{
    /// <summary>Kept free between the text and the strokes at its ends, paper mm.</summary>
    private const double Margin = 1.3;

    /// <summary>How far aside a place is tried, and how often.</summary>
    private const double SideStep = 2.5;
    private const int Tries = 6;

    /// <summary>
    /// A thin line through the text weighs as much as this many steps aside; a line crossed by the dimension line is one.
    /// </summary>
    private const int TextCut = 3;

    /// <summary>Two dimension lines beside each other are no nearer than this, paper mm.</summary>
    private const double Pitch = 2.4;

    private readonly List<(bool Upright, PaperBox Room)> lines = [];
    private readonly DrawnObstacles obstacles = new(scene.Items, standard.HeavyFrom, area);

    /// <param name="aside">Unit vector on the plan across the dimension, to where it may be moved.</param>
    /// <returns>False when there is no clear place; nothing is drawn then.</returns>
    public bool Draw(PlanPoint from, PlanPoint to, (int X, int Y) aside, string group)
    {
        bool upright = from.X == to.X;
        var length = Length.Abs(upright ? tape.Between(from.Y, to.Y) : tape.Between(from.X, to.X));
        string text = tape.Dimension(length);
        if (transform.Size(length) < TextMeasure.Width(text, standard.NoteHeight) + (2 * Margin))
        {
            return false;
        }

        (int Cost, PaperPoint A, PaperPoint B, TextItem Text)? best = null;
        for (int i = 0; i < Tries && !(best?.Cost <= i); i++)
        {
            var move = new PaperPoint(aside.X * SideStep * i, -aside.Y * SideStep * i);
            var a = transform.ToPaper(from) + move;
            var b = transform.ToPaper(to) + move;
            var item = Text(text, a, b, upright, group);
            var box = TextMeasure.Box(item);
            if (!obstacles.IsFree(box) || !IsClearOfTexts(a, b) || lines.Exists(l => l.Upright == upright && l.Room.IsCutBy(a, b)))
            {
                continue;
            }

            int cost = i + (obstacles.ThinCuts(box) * TextCut) + obstacles.Crossings(a, b);
            if (best is null || cost < best.Value.Cost)
            {
                best = (cost, a, b, item);
            }
        }

        if (best is not { } found)
        {
            return false;
        }

        scene.Line(found.A, found.B, new Pen(standard.Narrow), Layers.Dimensions, group, Band.Annotation);
        RowPen.Tick(scene, found.A, standard, group);
        RowPen.Tick(scene, found.B, standard, group);
        scene.Text(found.Text);
        lines.Add((upright, PaperBox.Of(found.A, found.B).Grown(Pitch)));
        obstacles.AddText(TextMeasure.Box(found.Text));
        foreach (var (start, end) in Ticks(found.A, found.B))
        {
            obstacles.AddHeavy(start, end, standard.Text);
        }

        return true;
    }

    private bool IsClearOfTexts(PaperPoint a, PaperPoint b)
        => obstacles.LeaderIsFree(a, b) && Ticks(a, b).All(t => obstacles.LeaderIsFree(t.From, t.To));

    private IEnumerable<(PaperPoint From, PaperPoint To)> Ticks(PaperPoint a, PaperPoint b)
        => [RowPen.TickEnds(a, standard), RowPen.TickEnds(b, standard)];

    private TextItem Text(string text, PaperPoint a, PaperPoint b, bool upright, string group)
    {
        var middle = new PaperPoint((a.X + b.X) / 2, (a.Y + b.Y) / 2);
        var at = middle - (upright ? new PaperPoint(standard.DimensionTextGap, 0) : new PaperPoint(0, standard.DimensionTextGap));
        return new TextItem(text, at, standard.NoteHeight, TextAnchor.Middle, Layers.Dimensions, group, upright ? 90 : 0);
    }
}
