using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Syntax;
using NetTopologySuite.Geometries;

namespace Floorplan.Drawing.Dimensions;

/// <summary>Where the texts of the rows of one side stand on paper.</summary>
internal sealed class RowPlaces(PlanTransform transform, Envelope extent, Side side, DrawingStandard standard)
{
    private readonly bool upright = side is Side.East or Side.West;

    /// <summary>Text stands on the side that it is read from: above a level line, left of an upright one.</summary>
    private readonly double textSign = side is Side.North or Side.West ? 1 : -1;

    public TextItem Text(LaidRow row, RowText text)
    {
        var at = At(Middle(row, text), row.Line + (textSign * Above(text)))
            + (upright ? new PaperPoint(0, -text.Shift) : new PaperPoint(text.Shift, 0));
        return new TextItem(
            text.Text, at, standard.NoteHeight, TextAnchor.Middle, Layers.Dimensions, row.Row.Group, upright ? 90 : 0);
    }

    /// <summary>The boxes of all texts of some rows.</summary>
    public IEnumerable<PaperBox> Boxes(IEnumerable<LaidRow> rows) => rows.SelectMany(r => r.Texts.Select(t => TextMeasure.Box(Text(r, t))));

    /// <summary>The line that leads a raised text up from its row.</summary>
    public (PaperPoint From, PaperPoint To) Leader(LaidRow row, RowText text)
    {
        double middle = Middle(row, text);
        return (At(middle, row.Line), At(middle, row.Line + (textSign * (Above(text) - (standard.DimensionTextGap / 2)))));
    }

    /// <summary>A place along the row, and paper mm outwards from the edge of the view.</summary>
    public PaperPoint At(double along, double outward) => side switch
    {
        Side.North => transform.ToPaper(along, extent.MaxY) - new PaperPoint(0, outward),
        Side.South => transform.ToPaper(along, extent.MinY) + new PaperPoint(0, outward),
        Side.East => transform.ToPaper(extent.MaxX, along) + new PaperPoint(outward, 0),
        _ => transform.ToPaper(extent.MinX, along) - new PaperPoint(outward, 0),
    };

    private double Above(RowText text) => standard.DimensionTextGap + (text.Level * RowLayout.LevelHeight(standard));

    private static double Middle(LaidRow row, RowText text)
        => row.Row.Form == DimensionForm.Running ? text.To : (text.From + text.To) / 2;
}
