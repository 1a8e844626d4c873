using System.Text;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Svg;

/// <summary>
/// Writes a sheet as SVG, 1 user unit = 1 paper mm. Only plain shapes with presentation attributes, so that browsers,
/// librsvg and Skia show the same picture. Same scene, same bytes.
/// </summary>
public static class SvgWriter
{
    private const string Fonts = "Inter, 'Helvetica Neue', Helvetica, Arial, sans-serif";

    /// <summary>Text grows in pieces that stay out of the heap of large objects, which costs more than it saves.</summary>
    private const int SmallChunk = 4096;

    public static string Write(SheetScene sheet) => Write(sheet, "", "");

    /// <summary>The same with parts that move over it.</summary>
    /// <param name="style">What a <c>style</c> element says; empty for none.</param>
    /// <param name="moving">Elements, written well.</param>
    internal static string Write(SheetScene sheet, string style, string moving)
    {
        var svg = new StringBuilder(SmallChunk);
        svg.Append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"").Append(SvgNumber.Text(sheet.WidthMm)).Append("mm\" height=\"")
            .Append(SvgNumber.Text(sheet.HeightMm)).Append("mm\" viewBox=\"0 0 ").Append(SvgNumber.Text(sheet.WidthMm)).Append(' ')
            .Append(SvgNumber.Text(sheet.HeightMm)).Append("\" role=\"img\" aria-labelledby=\"sheet-title sheet-description\">\n");
        svg.Append("<title id=\"sheet-title\">").Append(XmlText.Escape(sheet.Title)).Append("</title>\n");
        svg.Append("<desc id=\"sheet-description\">").Append(XmlText.Escape(sheet.Description)).Append("</desc>\n");
        if (style.Length > 0)
        {
            svg.Append("<style>\n").Append(style).Append("</style>\n");
        }

        svg.Append("<rect width=\"").Append(SvgNumber.Text(sheet.WidthMm)).Append("\" height=\"").Append(SvgNumber.Text(sheet.HeightMm))
            .Append("\" fill=\"#FFFFFF\"/>\n");
        svg.Append("<g font-family=\"").Append(Fonts).Append("\" stroke-linecap=\"butt\" stroke-linejoin=\"miter\">\n");
        Items(svg, sheet.Items);
        return svg.Append(moving).Append("</g>\n</svg>\n").ToString();
    }

    /// <summary>The elements of some items, to stand within those of a whole picture.</summary>
    internal static string Fragment(IReadOnlyList<SceneItem> items)
    {
        var svg = new StringBuilder();
        Items(svg, items);
        return svg.ToString();
    }

    private static void Items(StringBuilder svg, IReadOnlyList<SceneItem> items)
    {
        for (int i = 0; i < items.Count;)
        {
            int end = i + 1;
            while (end < items.Count && items[end].Layer == items[i].Layer && items[end].Group == items[i].Group)
            {
                end++;
            }

            Group(svg, items, i, end);
            i = end;
        }
    }

    /// <summary>Neighbours of one layer and one group share a <c>g</c>.</summary>
    private static void Group(StringBuilder svg, IReadOnlyList<SceneItem> items, int start, int end)
    {
        svg.Append("<g class=\"").Append(items[start].Layer).Append("\">");
        if (items[start].Group is { } group)
        {
            svg.Append("<title>").Append(XmlText.Escape(group)).Append("</title>");
        }

        svg.Append('\n');
        for (int i = start; i < end;)
        {
            i = items[i] is LineItem line ? Lines(svg, items, line.Pen, i, end) : Item(svg, items[i], i);
        }

        svg.Append("</g>\n");
    }

    /// <summary>A run of lines of one pen, such as a hatch, becomes one path.</summary>
    private static int Lines(StringBuilder svg, IReadOnlyList<SceneItem> items, Pen pen, int start, int end)
    {
        svg.Append("<path d=\"");
        int i = start;
        for (; i < end && items[i] is LineItem line && SamePen(line.Pen, pen); i++)
        {
            svg.Append('M');
            Point(svg, line.From);
            svg.Append('L');
            Point(svg, line.To);
        }

        svg.Append('"');
        Stroke(svg, pen);
        svg.Append("/>\n");
        return i;
    }

    private static int Item(StringBuilder svg, SceneItem item, int index)
    {
        switch (item)
        {
            case PolylineItem line:
                svg.Append("<path d=\"");
                Ring(svg, line.Points, line.Closed);
                svg.Append('"');
                Stroke(svg, line.Pen);
                svg.Append("/>\n");
                break;
            case ArcItem arc:
                Arc(svg, arc);
                break;
            case AreaItem area:
                svg.Append("<path d=\"");
                foreach (var ring in area.Rings)
                {
                    Ring(svg, ring, true);
                }

                svg.Append("\" fill=\"").Append(area.Fill).Append("\" fill-rule=\"evenodd\"/>\n");
                break;
            case TextItem text:
                Text(svg, text);
                break;
        }

        return index + 1;
    }

    private static void Arc(StringBuilder svg, ArcItem arc)
    {
        if (arc.EndDegrees - arc.StartDegrees >= 360)
        {
            Number(svg.Append("<circle cx=\""), arc.Centre.X);
            Number(svg.Append("\" cy=\""), arc.Centre.Y);
            Number(svg.Append("\" r=\""), arc.Radius).Append('"');
        }
        else
        {
            // On paper y points down, so a counter-clockwise arc runs against the sweep flag.
            bool large = arc.EndDegrees - arc.StartDegrees > 180;
            Point(svg.Append("<path d=\"M"), arc.At(arc.StartDegrees));
            Point(svg.Append('A'), new(arc.Radius, arc.Radius)).Append(" 0 ").Append(large ? '1' : '0').Append(" 0 ");
            Point(svg, arc.At(arc.EndDegrees));
            svg.Append('"');
        }

        Stroke(svg, arc.Pen);
        svg.Append("/>\n");
    }

    private static void Text(StringBuilder svg, TextItem text)
    {
        Number(svg.Append("<text x=\""), text.At.X);
        Number(svg.Append("\" y=\""), text.At.Y);
        Number(svg.Append("\" font-size=\""), TextMeasure.FontSize(text.CapHeight)).Append('"');
        svg.Append(
            text.Anchor switch { TextAnchor.Middle => " text-anchor=\"middle\"", TextAnchor.End => " text-anchor=\"end\"", _ => "" });
        svg.Append(text.Bold ? " font-weight=\"700\"" : "");
        svg.Append(" fill=\"").Append(text.Colour).Append('"');
        if (text.Degrees != 0)
        {
            Point(Number(svg.Append(" transform=\"rotate("), -text.Degrees).Append(' '), text.At).Append(")\"");
        }

        svg.Append('>').Append(XmlText.Escape(text.Text)).Append("</text>\n");
    }

    private static void Ring(StringBuilder svg, IReadOnlyList<PaperPoint> points, bool closed)
    {
        for (int i = 0; i < points.Count; i++)
        {
            svg.Append(i == 0 ? 'M' : 'L');
            Point(svg, points[i]);
        }

        svg.Append(closed ? "Z" : "");
    }

    private static StringBuilder Point(StringBuilder svg, PaperPoint point) => Number(Number(svg, point.X).Append(' '), point.Y);

    private static StringBuilder Number(StringBuilder svg, double value) => SvgNumber.Append(svg, value);

    private static void Stroke(StringBuilder svg, Pen pen)
    {
        svg.Append(" fill=\"none\" stroke=\"").Append(pen.Colour);
        Number(svg.Append("\" stroke-width=\""), pen.Width).Append('"');
        if (pen.Dash is { } dash)
        {
            svg.Append(" stroke-dasharray=\"").AppendJoin(' ', dash.Select(SvgNumber.Text)).Append('"');
        }
    }

    private static bool SamePen(Pen a, Pen b)
        => a.Width.Equals(b.Width)
            && a.Colour == b.Colour
            && (ReferenceEquals(a.Dash, b.Dash) || (a.Dash is not null && b.Dash is not null && a.Dash.SequenceEqual(b.Dash)));
}
