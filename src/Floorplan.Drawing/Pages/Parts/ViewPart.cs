using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Pages.Parts;

/// <summary>One part of a large view, from match line to match line.</summary>
/// <param name="index">From 0, row by row, left to right.</param>
/// <param name="columns">The ends of the view and where it is cut, left to right, in paper mm.</param>
/// <param name="rows">The same, top to bottom.</param>
internal sealed class ViewPart(WholeView whole, int index, double[] columns, double[] rows) : ISheetView
{
    /// <summary>Paper on each side of a part for its match lines and their words, mm.</summary>
    public const double Beside = 5;

    /// <summary>From a match line to its words, mm.</summary>
    private const double WordsAway = 1.2;

    /// <summary>The same where the tails of letters point to the line.</summary>
    private const double TailsAway = 1.5;

    private static readonly double[] MatchDash = [8, 2, 2, 2];

    public string Title => FormattableString.Invariant($"{whole.View.Title}, part {index + 1} of {Across * Down}");

    public bool IsPlan => whole.View.IsPlan;

    public bool HasScale => whole.View.HasScale;

    public double Density => whole.View.Density;

    private int Across => columns.Length - 1;

    private int Down => rows.Length - 1;

    private int Column => index % Across;

    private int Row => index / Across;

    private double BesideX => Across > 1 ? Beside : 0;

    private double BesideY => Down > 1 ? Beside : 0;

    /// <summary>The part in the view's own paper.</summary>
    private PaperBox Share => new(columns[Column], rows[Row], columns[Column + 1], rows[Row + 1]);

    /// <summary>At the scale that the view was cut at.</summary>
    public PaperSpace Measure(double denominator) => new(Share.Width + (2 * BesideX), Share.Height + (2 * BesideY));

    public void Draw(ViewCanvas canvas)
    {
        var window = PaperBox.At(new(canvas.Box.Left + BesideX, canvas.Box.Top + BesideY), Share.Width, Share.Height);
        whole.CopyTo(canvas, Share, new(window.Left, window.Top));
        MatchLines(canvas, window);
    }

    private void MatchLines(ViewCanvas canvas, PaperBox window)
    {
        double letters = canvas.Standard.NoteHeight;
        if (Column > 0)
        {
            Upright(canvas, window, window.Left, window.Left - TailsAway, index);
        }

        if (Column + 1 < Across)
        {
            Upright(canvas, window, window.Right, window.Right + WordsAway + letters, index + 2);
        }

        if (Row > 0)
        {
            Lying(canvas, window, window.Top, window.Top - TailsAway, index + 1 - Across);
        }

        if (Row + 1 < Down)
        {
            Lying(canvas, window, window.Bottom, window.Bottom + WordsAway + letters, index + 1 + Across);
        }
    }

    /// <param name="words">The foot of its words, outside the part.</param>
    /// <param name="other">The part that goes on there, from 1.</param>
    private static void Upright(ViewCanvas canvas, PaperBox window, double x, double words, int other)
    {
        Line(canvas, new(x, window.Top), new(x, window.Bottom));
        Words(canvas, new(words, window.Bottom - 2), 90, other);
    }

    /// <inheritdoc cref="Upright"/>
    private static void Lying(ViewCanvas canvas, PaperBox window, double y, double words, int other)
    {
        Line(canvas, new(window.Left, y), new(window.Right, y));
        Words(canvas, new(window.Left + 2, words), 0, other);
    }

    private static void Line(ViewCanvas canvas, PaperPoint from, PaperPoint to) => canvas.Scene.Line(
        from, to, new Pen(canvas.Standard.Text, Dash: MatchDash), Layers.Marks, "match line", Band.Annotation);

    private static void Words(ViewCanvas canvas, PaperPoint at, double degrees, int other) => canvas.Scene.Text(
        new TextItem(
            FormattableString.Invariant($"match line, part {other}"), at, canvas.Standard.NoteHeight, TextAnchor.Start,
            Layers.Marks, "match line", degrees));
}
