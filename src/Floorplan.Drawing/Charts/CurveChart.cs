using System.Globalization;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Quantities;

namespace Floorplan.Drawing.Charts;

/// <summary>Lines over time or over a number, with a dashed line at what is held or asked for. Words stand outside the lines.</summary>
/// <param name="width">On paper, mm.</param>
/// <param name="height">On paper, mm, with axis and words.</param>
internal sealed class CurveChart(
    CurveFrame frame, IReadOnlyList<CurveSeries> series, double width, double height, DrawingStandard standard) : ISheetView
{
    private const double HeadHeight = 7;
    private const double KeySample = 10;
    private const double RowOfKey = 5;
    private const double MarkSize = 1.3;

    /// <summary>Room for a number of the upright axis, mm; so many of them read well.</summary>
    private const double EachNumber = 7;

    private readonly IReadOnlyList<double> numbers = ChartTicks.Numbers(
        series.SelectMany(s => s.Points).Concat(frame.Limit).Select(p => p.Y).DefaultIfEmpty(1).Max(),
        (int)Math.Max(1, (height - HeadHeight - TimeAxis.Height) / EachNumber));

    public string Title => frame.Title;

    public bool IsPlan => false;

    public bool HasScale => false;

    public double Density => 0.85;

    private bool HasKey => series.Count > 1;

    private double Letters => standard.NoteHeight;

    public PaperSpace Measure(double denominator) => new(width, height);

    public void Draw(ViewCanvas canvas)
    {
        var scene = canvas.Scene;
        double numberWidth = numbers.Max(n => TextMeasure.Width(Number(n), Letters)) + 2;
        var plot = new PaperBox(
            canvas.Box.Left + numberWidth, canvas.Box.Top + HeadHeight, canvas.Box.Right - RightOf(), canvas.Box.Bottom - TimeAxis.Height);
        Head(scene, canvas.Box);
        Upright(scene, plot);
        Lying(scene, plot);
        PaperPoint At((double X, double Y) p) => new(
            Math.Round(plot.Left + (plot.Width * (p.X - frame.From) / Math.Max(1e-9, frame.To - frame.From)), 2),
            Math.Round(plot.Bottom - (plot.Height * p.Y / numbers[^1]), 2));
        if (frame.Limit.Count > 1)
        {
            scene.Polyline(
                [.. frame.Limit.Select(At)], false, new Pen(standard.Text, Dash: [2.4, 1.2]), Layers.Chart, frame.Title + ":limit",
                Band.Annotation);
        }

        foreach (var (i, one) in series.Index())
        {
            Line(scene, one, i, At);
        }

        if (frame.Mark is { } mark)
        {
            Mark(scene, At(mark), plot.Bottom);
        }

        Key(scene, new PaperPoint(plot.Right + 4, plot.Top + 2));
    }

    private double RightOf() => HasKey
        ? 4 + KeySample + 2 + series.Max(s => TextMeasure.Width(SafeText.Clean(s.Name), Letters))
        : TextMeasure.Width(frame.IsTime ? ClockText.Of((long)frame.To) : Number(Math.Floor(frame.To)), Letters) / 2;

    private void Head(SceneBuilder scene, PaperBox box) => scene.Text(
        new TextItem(
            SafeText.Fit(SafeText.Clean(frame.Head), box.Width, Letters, false), new(box.Left, box.Top + (Letters * TextMeasure.Ascent)),
            Letters, TextAnchor.Start, Layers.Chart, frame.Title));

    private void Upright(SceneBuilder scene, PaperBox plot)
    {
        foreach (double number in numbers)
        {
            double y = plot.Bottom - (plot.Height * number / numbers[^1]);
            scene.Line(new(plot.Left, y), new(plot.Right, y), Grid, Layers.Chart, frame.Title, Band.Tint);
            scene.Text(
                new TextItem(
                    Number(number), new(plot.Left - 1.5, y + (Letters / 2)), Letters, TextAnchor.End, Layers.Chart, frame.Title));
        }

        scene.Line(new(plot.Left, plot.Top), new(plot.Left, plot.Bottom), new Pen(standard.Narrow), Layers.Chart, frame.Title);
    }

    private void Lying(SceneBuilder scene, PaperBox plot)
    {
        if (frame.IsTime)
        {
            new TimeAxis((long)frame.To, plot.Left, plot.Right, standard).Draw(scene, plot.Top, plot.Bottom, frame.Foot, frame.Title);
            return;
        }

        double each = TextMeasure.Width(Number(Math.Floor(frame.To)), Letters) + 4;
        int step = (int)Math.Max(1, Math.Ceiling((frame.To - frame.From) * each / plot.Width));
        for (double n = Math.Ceiling(frame.From); n <= frame.To; n += step)
        {
            double x = plot.Left + (plot.Width * (n - frame.From) / Math.Max(1e-9, frame.To - frame.From));
            scene.Line(new(x, plot.Top), new(x, plot.Bottom + 1.2), Grid, Layers.Chart, frame.Title, Band.Tint);
            scene.Text(
                new TextItem(
                    Number(n), new(x, plot.Bottom + 2.6 + Letters), Letters, TextAnchor.Middle, Layers.Chart, frame.Title));
        }

        scene.Line(new(plot.Left, plot.Bottom), new(plot.Right, plot.Bottom), new Pen(standard.Narrow), Layers.Chart, frame.Title);
        scene.Text(
            new TextItem(
                SafeText.Fit(SafeText.Clean(frame.Foot), plot.Width, Letters, false), new(plot.Left, plot.Bottom + 3 + (Letters * 2.5)),
                Letters, TextAnchor.Start, Layers.Chart, frame.Title));
    }

    private Pen Grid => new(standard.Fine, Palette.HatchGrey);

    private void Line(SceneBuilder scene, CurveSeries one, int index, Func<(double X, double Y), PaperPoint> at)
    {
        string group = $"{frame.Title}:{one.Name}";
        scene.Polyline([.. Steps(one).Select(at)], false, ChartPens.Of(index, standard), Layers.Chart, group, Band.Annotation);
        if (!one.IsStep)
        {
            foreach (var point in one.Points)
            {
                ChartPens.Marker(scene, at(point), index, standard, group);
            }
        }

        if (one.Now is { } now)
        {
            scene.Circle(at(now), 2, new Pen(standard.Narrow), Layers.Chart, group, Band.Annotation);
        }
    }

    private IEnumerable<(double X, double Y)> Steps(CurveSeries one)
    {
        for (int i = 0; i < one.Points.Count; i++)
        {
            if (one.IsStep && i > 0 && !one.Points[i].Y.Equals(one.Points[i - 1].Y))
            {
                yield return (one.Points[i].X, one.Points[i - 1].Y);
            }

            yield return one.Points[i];
        }

        if (one.IsStep && one.Points.Count > 0 && one.Points[^1].X < frame.To)
        {
            yield return (frame.To, one.Points[^1].Y);
        }
    }

    /// <summary>A triangle that points at where the limit is reached, and a line down to the time.</summary>
    private void Mark(SceneBuilder scene, PaperPoint at, double foot)
    {
        string group = frame.Title + ":full";
        scene.Fill(
            [[at, new(at.X - MarkSize, at.Y - (2 * MarkSize)), new(at.X + MarkSize, at.Y - (2 * MarkSize))]], Palette.Black, Layers.Chart,
            group, Band.Annotation);
        scene.Line(at, new(at.X, foot), new Pen(standard.Narrow, Dash: [1, 0.8]), Layers.Chart, group, Band.Annotation);
    }

    private void Key(SceneBuilder scene, PaperPoint at)
    {
        for (int i = 0; HasKey && i < series.Count; i++)
        {
            double y = at.Y + (i * RowOfKey);
            scene.Line(new(at.X, y), new(at.X + KeySample, y), ChartPens.Of(i, standard), Layers.Chart, frame.Title);
            ChartPens.Marker(scene, new(at.X + (KeySample / 2), y), i, standard, frame.Title);
            scene.Text(
                new TextItem(
                    SafeText.Clean(series[i].Name), new(at.X + KeySample + 2, y + (Letters / 2)), Letters, TextAnchor.Start, Layers.Chart,
                    frame.Title));
        }
    }

    private static string Number(double number) => number < 10
        ? QuantityText.Coarse(number)
        : number.ToString("#,0", CultureInfo.InvariantCulture);
}
