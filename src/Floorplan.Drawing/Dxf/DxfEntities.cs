using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Dxf;

/// <summary>Items of a sheet as entities.</summary>
internal sealed class DxfEntities(DxfPairs pairs, SheetScene sheet, DxfLineTypes types)
{
    private readonly DxfPlace place = new(sheet);

    /// <summary>Areas of a fixed colour, on which text must not turn white.</summary>
    private readonly IReadOnlyList<AreaItem> signs = [.. sheet.Items.OfType<AreaItem>().Where(a => DxfColour.IsFixed(a.Fill))];

    public const string Regular = "STANDARD";
    public const string Bold = "BOLD";

    public void Write(SceneItem item)
    {
        switch (item)
        {
            case LineItem line:
                Start("LINE", line, line.Pen).Point(10, At(line.From)).Point(11, At(line.To));
                break;
            case PolylineItem line:
                Polyline(line);
                break;
            case ArcItem arc:
                Arc(arc);
                break;
            case AreaItem area when DxfTriangles.IsDark(area.Fill):
                Area(area);
                break;
            case TextItem text:
                Text(text);
                break;
        }
    }

    private void Polyline(PolylineItem line)
    {
        Start("POLYLINE", line, line.Pen).Add(66, 1).Point(10, new(0, 0)).Add(70, line.Closed ? 1 : 0);
        foreach (var point in line.Points)
        {
            pairs.Add(0, "VERTEX").Add(8, line.Layer).Point(10, At(point));
        }

        pairs.Add(0, "SEQEND").Add(8, line.Layer);
    }

    private void Arc(ArcItem arc)
    {
        bool circle = arc.EndDegrees - arc.StartDegrees >= 360;
        Start(circle ? "CIRCLE" : "ARC", arc, arc.Pen).Point(10, At(arc.Centre)).Add(40, arc.Radius * sheet.Denominator);
        if (!circle)
        {
            pairs.Add(50, Turned(arc.StartDegrees)).Add(51, Turned(arc.EndDegrees));
        }
    }

    // Corners of a SOLID go in a Z, so a triangle repeats its last.
    private void Area(AreaItem area)
    {
        foreach (var corners in DxfTriangles.Of(area))
        {
            Start("SOLID", area, DxfColour.OfShape(area.Fill)).Point(10, At(corners[0])).Point(11, At(corners[1])).Point(12, At(corners[2]))
                .Point(13, At(corners[2]));
        }
    }

    private void Text(TextItem text)
    {
        bool onSign = signs.Any(a => a.Group == text.Group && a.Rings.Any(r => PaperBox.Of(r).Holds(text.At)));
        StartOf("TEXT", text, onSign ? DxfColour.DarkOnSign : DxfColour.OfText(text.Colour))
            .Point(10, At(text.At)).Add(40, text.CapHeight * sheet.Denominator)
            .Add(1, DxfText.Escape(text.Text))
            .Add(50, Turned(text.Degrees)).Add(7, text.Bold ? Bold : Regular);
        if (text.Anchor != TextAnchor.Start)
        {
            pairs.Add(72, text.Anchor == TextAnchor.Middle ? 1 : 2).Point(11, At(text.At));
        }
    }

    /// <summary>Black shapes take the colour of their layer, and so does what has it anyway.</summary>
    private DxfPairs Start(string kind, SceneItem item, int colour)
        => colour == DxfColour.Ink || colour == DxfLayers.ColourOf(item.Layer)
            ? pairs.Add(0, kind).Add(8, item.Layer)
            : StartOf(kind, item, colour);

    private DxfPairs Start(string kind, SceneItem item, Pen pen)
    {
        Start(kind, item, DxfColour.OfShape(pen.Colour));
        string type = types.Name(pen);
        return type == types.OfLayer(item.Layer) ? pairs : pairs.Add(6, type);
    }

    private DxfPairs StartOf(string kind, SceneItem item, int colour) => pairs.Add(0, kind).Add(8, item.Layer).Add(62, colour);

    private PaperPoint At(PaperPoint paper) => place.Of(paper);

    private static double Turned(double degrees) => ((degrees % 360) + 360) % 360;
}
