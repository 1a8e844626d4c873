using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using Floorplan.Print.Fonts;
using SkiaSharp;

namespace Floorplan.Print.Painting;

/// <summary>
/// Paints a sheet on a canvas that is already scaled to paper millimetres. PDF and PNG come from here, so they show the same.
/// </summary>
internal sealed class ScenePainter : IDisposable
{
    private readonly SKCanvas _canvas;
    private readonly SKFont _regular = Font(Typefaces.Regular);
    private readonly SKFont _bold = Font(Typefaces.Bold);
    private readonly SKPaint _fill = new() { Style = SKPaintStyle.Fill, IsAntialias = true };
    private readonly SKPaint _stroke =
        new() { Style = SKPaintStyle.Stroke, IsAntialias = true, StrokeCap = SKStrokeCap.Butt, StrokeJoin = SKStrokeJoin.Miter };

    private ScenePainter(SKCanvas canvas) => _canvas = canvas;

    public static void Paint(SheetScene sheet, SKCanvas canvas)
    {
        using var painter = new ScenePainter(canvas);
        for (int i = 0; i < sheet.Items.Count;)
        {
            i = sheet.Items[i] is LineItem line ? painter.Lines(sheet.Items, line.Pen, i) : painter.Item(sheet.Items[i], i);
        }
    }

    public void Dispose()
    {
        _stroke.Dispose();
        _fill.Dispose();
        _bold.Dispose();
        _regular.Dispose();
    }

    // Widths as in the font's own table, whatever the size: the sheets were measured with them.
    private static SKFont Font(SKTypeface face)
        => new(face) { Hinting = SKFontHinting.None, Subpixel = true, LinearMetrics = true, Edging = SKFontEdging.Antialias };

    /// <summary>A run of lines of one pen, such as a hatch, becomes one path.</summary>
    private int Lines(IReadOnlyList<SceneItem> items, Pen pen, int start)
    {
        using var path = new SKPathBuilder();
        int i = start;
        for (; i < items.Count && items[i] is LineItem line && line.Pen == pen; i++)
        {
            path.MoveTo(Point(line.From));
            path.LineTo(Point(line.To));
        }

        Stroke(path, pen);
        return i;
    }

    private int Item(SceneItem item, int index)
    {
        switch (item)
        {
            case PolylineItem line:
                using (var path = new SKPathBuilder())
                {
                    Ring(path, line.Points, line.Closed);
                    Stroke(path, line.Pen);
                }

                break;
            case ArcItem arc:
                Arc(arc);
                break;
            case AreaItem area:
                Area(area);
                break;
            case TextItem text:
                Text(text);
                break;
        }

        return index + 1;
    }

    // Skia counts angles clockwise on paper.
    private void Arc(ArcItem arc)
    {
        using var path = new SKPathBuilder();
        double sweep = arc.EndDegrees - arc.StartDegrees;
        if (sweep >= 360)
        {
            path.AddCircle((float)arc.Centre.X, (float)arc.Centre.Y, (float)arc.Radius);
        }
        else
        {
            var box =
                new SKRect(
                    (float)(arc.Centre.X - arc.Radius), (float)(arc.Centre.Y - arc.Radius), (float)(arc.Centre.X + arc.Radius),
                    (float)(arc.Centre.Y + arc.Radius));
            path.AddArc(box, (float)-arc.StartDegrees, (float)-sweep);
        }

        Stroke(path, arc.Pen);
    }

    private void Area(AreaItem area)
    {
        using var builder = new SKPathBuilder { FillType = SKPathFillType.EvenOdd };
        foreach (var ring in area.Rings)
        {
            Ring(builder, ring, true);
        }

        _fill.Color = SKColor.Parse(area.Fill);
        using var path = builder.Detach();
        _canvas.DrawPath(path, _fill);
    }

    private void Text(TextItem text)
    {
        var font = text.Bold ? _bold : _regular;
        font.Size = (float)TextMeasure.FontSize(text.CapHeight);
        _fill.Color = SKColor.Parse(text.Colour);
        var align =
            text.Anchor switch { TextAnchor.Middle => SKTextAlign.Center, TextAnchor.End => SKTextAlign.Right, _ => SKTextAlign.Left };
        _canvas.Save();
        _canvas.Translate(Point(text.At));
        _canvas.RotateDegrees((float)-text.Degrees);
        _canvas.DrawText(Typefaces.Drawable(text.Text, text.Bold), 0, 0, align, font, _fill);
        _canvas.Restore();
    }

    private void Stroke(SKPathBuilder builder, Pen pen)
    {
        _stroke.StrokeWidth = (float)pen.Width;
        _stroke.Color = SKColor.Parse(pen.Colour);
        using var dash = pen.Dash is { Count: > 0 } pattern ? SKPathEffect.CreateDash(Even(pattern), 0) : null;
        _stroke.PathEffect = dash;
        using var path = builder.Detach();
        _canvas.DrawPath(path, _stroke);
        _stroke.PathEffect = null;
    }

    // As SVG reads an odd number of lengths: twice over.
    private static float[] Even(IReadOnlyList<double> dash) => [.. (dash.Count % 2 == 0 ? dash : [.. dash, .. dash]).Select(d => (float)d)];

    private static void Ring(SKPathBuilder path, IReadOnlyList<PaperPoint> points, bool closed)
    {
        for (int i = 0; i < points.Count; i++)
        {
            if (i == 0)
            {
                path.MoveTo(Point(points[i]));
            }
            else
            {
                path.LineTo(Point(points[i]));
            }
        }

        if (closed)
        {
            path.Close();
        }
    }

    private static SKPoint Point(PaperPoint at) => new((float)at.X, (float)at.Y);
}
