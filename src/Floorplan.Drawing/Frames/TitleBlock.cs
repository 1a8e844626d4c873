using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Frames;

/// <summary>
/// The title block: 180 mm wide, bottom right (ISO 7200; F2), with what this tool always adds. Rows grow with what is written in them.
/// </summary>
internal static class TitleBlock
{
    public const double Width = 180;

    private const double NameHeight = 2;
    private const double Pad = 1.2;
    private const double NameGap = 1.1;
    private const string Grey = "#404040";

    /// <summary>In letters; longer names are bounded by the text already. Own choice.</summary>
    private const int Longest = 400;

    /// <param name="standard">Of the sheet.</param>
    /// <param name="scale">A text as long as that of the finished sheet.</param>
    public static double Height(TitleBlockFields fields, string scale, string paper, string units, DrawingStandard standard)
        => Rows(fields, scale, paper, units, standard).Sum(r => r.Height);

    public static void Draw(
        SceneBuilder scene, PaperBox box, TitleBlockFields fields, string scale, string paper, string units, DrawingStandard standard)
    {
        scene.Rectangle(box, new Pen(standard.FrameLine), Layers.TitleBlock, null, Band.Annotation);
        double y = box.Top;
        foreach (var row in Rows(fields, scale, paper, units, standard))
        {
            if (y > box.Top)
            {
                scene.Line(new(box.Left, y), new(box.Right, y), new Pen(standard.Narrow), Layers.TitleBlock, null, Band.Annotation);
            }

            double x = box.Left;
            foreach (var cell in row.Cells)
            {
                Draw(scene, cell, new(x, y));
                if (x > box.Left)
                {
                    scene.Line(new(x, y), new(x, y + row.Height), new Pen(standard.Narrow), Layers.TitleBlock, null, Band.Annotation);
                }

                x += cell.Width;
            }

            y += row.Height;
        }
    }

    private static List<Row> Rows(TitleBlockFields f, string scale, string paper, string units, DrawingStandard standard)
    {
        double note = standard.NoteHeight;
        var rows = new List<Row>
        {
            new(
            [
                Cell.Of("Title", f.Title, 96, standard.SubtitleHeight, bold: true),
                Cell.Of("Sheet no.", f.SheetNumber, 58, note, bold: true), Cell.Of("Caution", "Do not scale", 26, note),
            ]),
            new(
            [
                Cell.Of("Owner", f.Owner, 55, note), Cell.Of("Site", f.Site, 45, note),
                Cell.Of("Sheet", f.SheetTitle, 54, note, bold: true), Cell.Of("Document type", f.DocumentType, 26, note),
            ]),
            new(
            [
                Cell.Of("Drawn by", f.DrawnBy, 35, note), Cell.Of("Checked by", f.CheckedBy, 35, note), Cell.Of("Date", f.Date, 25, note),
                Cell.Of("Revision", f.Revision, 16, note), Cell.Of("Number", f.Number, 30, note), Cell.Of("Scale", scale, 39, note),
            ]),
            new(
            [
                Cell.Of("Units", units, 30, note), Cell.Of("Paper", paper, 22, note), Cell.Of("Checks", f.Checks, 52, note),
                Cell.Of("Source file, content hash", f.SourceName, 49, note, after: f.SourceHash),
                Cell.Of("Made with", f.Tool, 27, note),
            ]),
        };
        if (f.Stop.Length > 0)
        {
            rows.Insert(0, new([Cell.Of("Status", f.Stop, 180, standard.SubtitleHeight, bold: true)]));
        }

        return rows;
    }

    private static void Draw(SceneBuilder scene, Cell cell, PaperPoint at)
    {
        scene.Text(
            new TextItem(
                cell.Name, at + new PaperPoint(Pad, Pad + NameHeight), NameHeight, TextAnchor.Start, Layers.TitleBlock, Colour: Grey));
        double y = Pad + NameHeight + NameGap + cell.TextHeight;
        foreach (string line in cell.Lines)
        {
            scene.Text(
                new TextItem(line, at + new PaperPoint(Pad, y), cell.TextHeight, TextAnchor.Start, Layers.TitleBlock, Bold: cell.Bold));
            y += cell.TextHeight * TextMeasure.LinePitch;
        }
    }

    private sealed record Row(IReadOnlyList<Cell> Cells)
    {
        public double Height => Cells.Max(c => c.Height);
    }

    /// <summary>A small name over a value.</summary>
    private sealed record Cell(string Name, IReadOnlyList<string> Lines, double Width, double TextHeight, bool Bold)
    {
        public double Height => Pad + NameHeight + NameGap + (TextHeight * (1 + (Math.Max(0, Lines.Count - 1) * TextMeasure.LinePitch)))
            + (TextHeight * TextMeasure.Descent) + 0.4;

        /// <param name="after">On a line of its own, so that another hash moves nothing else.</param>
        public static Cell Of(string name, string value, double width, double height, bool bold = false, string after = "") => new(
            name,
            [
                .. TextWrap.Lines(SafeText.Clean(value, Longest), width - (2 * Pad), height, bold),
                .. after.Length > 0 ? [after] : Array.Empty<string>(),
            ],
            width, height, bold);
    }
}
