using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using Floorplan.Sizing.Sizes;

namespace Floorplan.Drawing.Charts;

/// <summary>
/// A bar for each figure, from the answer at its low end to the answer at its high end, the longest on top: what matters most. White is
/// below the middle of the answers, grey above it.
/// </summary>
/// <param name="width">On paper, mm.</param>
internal sealed class SwingChart(IReadOnlyList<SizeSwing> swings, string title, double width, DrawingStandard standard) : ISheetView
{
    private const double RowHeight = 7;
    private const double BarHeight = 4;

    /// <summary>Of the chart's width that names may take.</summary>
    private const double NameShare = 0.36;

    public string Title => title;

    public bool IsPlan => false;

    public bool HasScale => false;

    public double Density => 0.85;

    private double Letters => standard.NoteHeight;

    public PaperSpace Measure(double denominator) => new(width, (swings.Count * RowHeight) + 2);

    public void Draw(ViewCanvas canvas)
    {
        var scene = canvas.Scene;
        double low = swings.Min(s => Math.Min(s.AtLow, s.AtHigh)), high = swings.Max(s => Math.Max(s.AtLow, s.AtHigh));
        double words = swings.Max(s => Math.Max(TextWidth(s.TextAtLow), TextWidth(s.TextAtHigh))) + 2;
        double left = canvas.Box.Left + (width * NameShare) + words;
        double right = canvas.Box.Right - words;
        double middle = X(swings.Average(s => (s.AtLow + s.AtHigh) / 2));
        for (int i = 0; i < swings.Count; i++)
        {
            Row(scene, swings[i], canvas.Box.Top + (i * RowHeight));
        }

        scene.Line(
            new(middle, canvas.Box.Top), new(middle, canvas.Box.Bottom), new Pen(standard.Narrow), Layers.Chart, title, Band.Annotation);

        double X(double value) => Math.Round(left + ((right - left) * (value - low) / Math.Max(1e-9, high - low)), 2);

        void Row(SceneBuilder to, SizeSwing swing, double top)
        {
            double y = top + ((RowHeight - BarHeight) / 2), text = top + ((RowHeight + Letters) / 2);
            bool rises = swing.AtHigh >= swing.AtLow;
            double from = X(rises ? swing.AtLow : swing.AtHigh), until = X(rises ? swing.AtHigh : swing.AtLow);
            double split = Math.Clamp(middle, from, until);
            Bar(from, split, Palette.White);
            Bar(split, until, Palette.LightGrey);
            Words(
                SafeText.Fit(SafeText.Clean(swing.Name), (width * NameShare) - 2, Letters, false), canvas.Box.Left, TextAnchor.Start);
            Words(rises ? swing.TextAtLow : swing.TextAtHigh, from - 1, TextAnchor.End);
            Words(rises ? swing.TextAtHigh : swing.TextAtLow, until + 1, TextAnchor.Start);

            void Bar(double a, double b, string colour)
            {
                if (b > a)
                {
                    var box = new PaperBox(a, y, b, y + BarHeight);
                    to.Fill(box, colour, Layers.Chart, title, Band.Object);
                    to.Rectangle(box, new Pen(standard.Narrow), Layers.Chart, title);
                }
            }

            void Words(string words, double at, TextAnchor anchor)
                => to.Text(new TextItem(words, new(at, text), Letters, anchor, Layers.Chart, title));
        }
    }

    private double TextWidth(string text) => TextMeasure.Width(text, Letters);
}
