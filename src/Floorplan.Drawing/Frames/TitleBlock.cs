using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Frames;

/// <summary>The title block: 180 mm wide, bottom right (ISO 7200; F2), with what this tool always adds.</summary>
internal static class TitleBlock
{
    public const double Width = 180;

    private const double NameHeight = 1.8;
    private const double Pad = 1.2;
    private const double Row = 8.5;
    private const double TitleRow = 11;
    private const double SourceWidth = 95;

    public const double Height = (5 * Row) + TitleRow;

    public static void Draw(
        SceneBuilder scene, PaperBox inside, TitleBlockFields f, string scale, string paper, string units, DrawingStandard standard)
    {
        var box = new PaperBox(inside.Right - Width, inside.Bottom - Height, inside.Right, inside.Bottom);
        scene.Rectangle(box, new Pen(standard.FrameLine), Layers.TitleBlock, null, Band.Annotation);
        double y = box.Top;
        var pen = new TableauPen(scene, box, standard);
        pen.Line(ref y, Row, ("Owner", f.Owner, 90), ("Site", f.Site, 90));
        pen.Line(ref y, TitleRow, ("Title", f.Title, 180));
        pen.Line(ref y, Row, ("Sheet", f.SheetTitle, 90), ("Document type", f.DocumentType, 45), ("Number", f.Number, 45));
        pen.Line(
            ref y, Row, ("Drawn by", f.DrawnBy, 45), ("Checked by", f.CheckedBy, 45), ("Date", f.Date, 45), ("Revision", f.Revision, 20),
            ("Sheet no.", FormattableString.Invariant($"{f.Sheet} (set of {f.Sheets})"), 25));
        pen.Line(ref y, Row, ("Scale", scale, 50), ("Units", units, 40), ("Paper", paper, 25), ("Checks", f.Checks, 65));
        pen.Line(
            ref y, Row, ("Source file, content hash", Source(f), SourceWidth),
            ("Made with", f.Tool, 35), ("Caution", "Do not scale from paper", 50));
    }

    /// <summary>The text of the cell that says what the sheet is made from, as it is drawn, and its height.</summary>
    public static (string Text, double Height) SourceText(TitleBlockFields f, DrawingStandard standard)
    {
        double height = standard.NoteHeight;
        return (TableauPen.Fitted(SafeText.Clean(Source(f)), SourceWidth - (2 * Pad), ref height, false, standard), height);
    }

    private static string Source(TitleBlockFields f) => f.SourceHash.Length == 0 ? f.SourceName : $"{f.SourceName}  {f.SourceHash}";

    /// <summary>Draws rows of cells: a small name over a value, which is shortened to fit.</summary>
    private sealed class TableauPen(SceneBuilder scene, PaperBox box, DrawingStandard standard)
    {
        public void Line(ref double y, double height, params ReadOnlySpan<(string Name, string Value, double Width)> cells)
        {
            double x = box.Left;
            foreach (var (name, value, width) in cells)
            {
                bool title = cells.Length == 1;
                double valueHeight = title ? standard.SubtitleHeight : standard.NoteHeight;
                scene.Text(
                    new TextItem(
                        name, new(x + Pad, y + Pad + NameHeight), NameHeight, TextAnchor.Start, Layers.TitleBlock, Colour: "#404040"));
                string text = Fitted(SafeText.Clean(value), width - (2 * Pad), ref valueHeight, title, standard);
                scene.Text(
                    new TextItem(
                        text, new(x + Pad, y + height - Pad - (title ? 0.6 : 0.2)), valueHeight, TextAnchor.Start, Layers.TitleBlock,
                        Bold: title));
                if (x > box.Left)
                {
                    scene.Line(new(x, y), new(x, y + height), new Pen(standard.Narrow), Layers.TitleBlock, null, Band.Annotation);
                }

                x += width;
            }

            if (y > box.Top)
            {
                scene.Line(new(box.Left, y), new(box.Right, y), new Pen(standard.Narrow), Layers.TitleBlock, null, Band.Annotation);
            }

            y += height;
        }

        /// <summary>Smaller letters first, then an ellipsis.</summary>
        public static string Fitted(string text, double width, ref double height, bool bold, DrawingStandard standard)
        {
            while (height > standard.SmallestHeight && TextMeasure.Width(text, height, bold) > width)
            {
                height = Math.Max(standard.SmallestHeight, height - 0.35);
            }

            return SafeText.Fit(text, width, height, bold);
        }
    }
}
