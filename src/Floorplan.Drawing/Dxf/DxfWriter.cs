using System.Globalization;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Dxf;

/// <summary>
/// Writes a sheet as ASCII DXF of release 12, which every program reads. One unit is one millimetre of the thing drawn, so that
/// lengths can be taken off; frame, tables and lettering are enlarged with it. The datum of the sheet's view is at 0, 0, so that the
/// plans of a set lie over each other. What R12 has not, line widths and light fills, is left out. Same scene, same bytes.
/// </summary>
public static class DxfWriter
{
    /// <summary>Ends the name of a file, so that nobody has to guess its unit.</summary>
    public const string NameEnd = "-mm";

    private static readonly PaperPoint NotePlace = new(12, 1.2);

    public static string Write(SheetScene sheet)
    {
        var types = new DxfLineTypes(sheet);
        var pairs = new DxfPairs();
        Header(pairs, sheet);
        Tables(pairs, sheet, types);
        pairs.Add(0, "SECTION").Add(2, "ENTITIES");
        var entities = new DxfEntities(pairs, sheet, types);
        foreach (var item in sheet.Items)
        {
            entities.Write(item);
        }

        string note =
            string.Create(CultureInfo.InvariantCulture, $"1 unit = 1 mm, true size; drawn for paper at 1:{sheet.Denominator:0.##}");
        entities.Write(new TextItem(note, new(NotePlace.X, sheet.HeightMm - NotePlace.Y), 2.5, TextAnchor.Start, Layers.Text));
        return pairs.Add(0, "ENDSEC").Add(0, "EOF").ToString();
    }

    private static void Header(DxfPairs pairs, SheetScene sheet)
    {
        var place = new DxfPlace(sheet);
        pairs.Add(0, "SECTION").Add(2, "HEADER")
            .Add(9, "$ACADVER").Add(1, "AC1009")
            .Add(9, "$EXTMIN").Point(10, place.LowerLeft)
            .Add(9, "$EXTMAX").Point(10, place.UpperRight)
            .Add(9, "$LTSCALE").Add(40, 1.0)
            .Add(9, "$LUNITS").Add(70, 2)
            .Add(0, "ENDSEC");
    }

    private static void Tables(DxfPairs pairs, SheetScene sheet, DxfLineTypes types)
    {
        pairs.Add(0, "SECTION").Add(2, "TABLES");
        View(pairs, sheet);

        pairs.Add(0, "TABLE").Add(2, "LTYPE").Add(70, types.Count);
        types.Write(pairs);
        pairs.Add(0, "ENDTAB");

        List<string> layers = ["0", .. sheet.Items.Select(i => i.Layer).Append(Layers.Text).Distinct().Order(StringComparer.Ordinal)];
        pairs.Add(0, "TABLE").Add(2, "LAYER").Add(70, layers.Count);
        foreach (string layer in layers)
        {
            pairs.Add(0, "LAYER").Add(2, layer).Add(70, 0).Add(62, DxfLayers.ColourOf(layer)).Add(6, types.OfLayer(layer));
        }

        pairs.Add(0, "ENDTAB").Add(0, "TABLE").Add(2, "STYLE").Add(70, 2);
        Style(pairs, DxfEntities.Regular, "arial.ttf");
        Style(pairs, DxfEntities.Bold, "arialbd.ttf");
        pairs.Add(0, "ENDTAB").Add(0, "ENDSEC");
    }

    /// <summary>The whole sheet is seen when the file is opened.</summary>
    private static void View(DxfPairs pairs, SheetScene sheet)
    {
        var place = new DxfPlace(sheet);
        var (lower, upper) = (place.LowerLeft, place.UpperRight);
        double height = upper.Y - lower.Y;
        pairs.Add(0, "TABLE").Add(2, "VPORT").Add(70, 1).Add(0, "VPORT").Add(2, "*ACTIVE").Add(70, 0)
            .Add(10, 0.0).Add(20, 0.0).Add(11, 1.0).Add(21, 1.0).Add(12, (lower.X + upper.X) / 2)
            .Add(22, (lower.Y + upper.Y) / 2)
            .Add(16, 0.0).Add(26, 0.0).Add(36, 1.0).Add(40, height).Add(41, (upper.X - lower.X) / height).Add(0, "ENDTAB");
    }

    private static void Style(DxfPairs pairs, string name, string font) => pairs
        .Add(0, "STYLE").Add(2, name).Add(70, 0).Add(40, 0.0).Add(41, 1.0).Add(50, 0.0).Add(71, 0).Add(42, 2.5).Add(3, font).Add(4, "");
}
