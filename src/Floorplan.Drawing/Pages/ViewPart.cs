using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Pages;

/// <summary>One part of a long view, from match line to match line.</summary>
/// <param name="index">From 0, left to right.</param>
internal sealed class ViewPart(ISheetView view, int index, int parts) : ISheetView
{
    /// <summary>Paper beside a part for its match line.</summary>
    private const double Beside = 5;

    /// <summary>From a match line to its words, mm.</summary>
    private const double WordsAway = 1.2;

    private static readonly double[] MatchDash = [8, 2, 2, 2];

    public string Title => FormattableString.Invariant($"{view.Title}, part {index + 1} of {parts}");

    public bool IsPlan => view.IsPlan;

    public double Density => view.Density;

    public PaperSpace Measure(double denominator)
    {
        var whole = view.Measure(denominator);
        return new PaperSpace((whole.Width / parts) + (2 * Beside), whole.Height);
    }

    public void Draw(ViewCanvas canvas)
    {
        var whole = view.Measure(canvas.Denominator);
        double width = whole.Width / parts;
        var window = PaperBox.At(new(canvas.Box.Left + Beside, canvas.Box.Top), width, whole.Height);
        var scene = new SceneBuilder(canvas.Denominator);
        var labels = new LabelPlacer(scene);
        view.Draw(
            canvas with
            {
                Scene = scene,
                Labels = labels,
                Box = PaperBox.At(new(window.Left - (index * width), window.Top), whole.Width, whole.Height),
            });
        scene.CopyTo(canvas.Scene, new SceneCrop(window));
        labels.CopyTo(canvas.Labels, window);
        if (index > 0)
        {
            MatchLine(canvas, window.Left, window.Left - WordsAway, index, index);
        }

        if (index + 1 < parts)
        {
            MatchLine(canvas, window.Right, window.Right + WordsAway + canvas.Standard.NoteHeight, index + 1, index + 2);
        }
    }

    /// <param name="words">The foot of its words, outside the part.</param>
    /// <param name="number">Of the line, the same on both parts that meet there.</param>
    /// <param name="other">The part that goes on there, from 1.</param>
    private static void MatchLine(ViewCanvas canvas, double x, double words, int number, int other)
    {
        var standard = canvas.Standard;
        canvas.Scene.Line(
            new(x, canvas.Box.Top), new(x, canvas.Box.Bottom), new Pen(standard.Text, Dash: MatchDash), Layers.Marks, "match line",
            Band.Annotation);
        canvas.Scene.Text(
            new TextItem(
                FormattableString.Invariant($"match line {number}, goes on in part {other}"), new(words, canvas.Box.Bottom - 2),
                standard.NoteHeight, TextAnchor.Start, Layers.Marks, "match line", 90));
    }
}
