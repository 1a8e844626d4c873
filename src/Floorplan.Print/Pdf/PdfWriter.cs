using Floorplan.Drawing.Scene;
using Floorplan.Print.Painting;
using Floorplan.Print.Pieces;
using SkiaSharp;

namespace Floorplan.Print.Pdf;

/// <summary>
/// Writes sheets as one PDF at true size: a page each, lines and text as such, the typeface embedded, a bookmark for every
/// sheet. Same sheets, same bytes.
/// </summary>
public static class PdfWriter
{
    /// <summary>PDF counts in points, 72 to the inch (ISO 32000-1, 8.3.2.3).</summary>
    internal const double PointsPerMm = 72 / 25.4;

    private const string Tool = "Floorplan";

    public static byte[] Write(IReadOnlyList<SheetScene> sheets, PdfInfo info)
        => Write([.. sheets.Select(s => (s, (Action<SKCanvas>)(canvas => ScenePainter.Paint(s, canvas))))], info);

    /// <summary>The same for pages that show pieces of sheets.</summary>
    public static byte[] Write(IReadOnlyList<PiecePage> pages, PdfInfo info)
        => Write([.. pages.Select(p => (p.Around, (Action<SKCanvas>)(canvas => Paint(p, canvas))))], info);

    private static void Paint(PiecePage page, SKCanvas canvas)
    {
        if (page.Sheet is { } sheet)
        {
            canvas.Save();
            canvas.Translate((float)(page.At.X - page.Window.Left), (float)(page.At.Y - page.Window.Top));
            canvas.ClipRect(
                new SKRect((float)page.Window.Left, (float)page.Window.Top, (float)page.Window.Right, (float)page.Window.Bottom));
            ScenePainter.Paint(sheet, canvas);
            canvas.Restore();
        }

        ScenePainter.Paint(page.Around, canvas);
    }

    /// <param name="pages">Of each the size and title, and what paints it in millimetres.</param>
    private static byte[] Write(IReadOnlyList<(SheetScene Page, Action<SKCanvas> Paint)> pages, PdfInfo info)
    {
        using var held = new MemoryStream();
        using (var stream = new SKManagedWStream(held))
        using (var document = SKDocument.CreatePdf(stream, Metadata(info)))
        {
            foreach (var (page, paint) in pages)
            {
                using var canvas = document.BeginPage((float)(page.WidthMm * PointsPerMm), (float)(page.HeightMm * PointsPerMm));
                canvas.Scale((float)PointsPerMm);
                paint(canvas);
                document.EndPage();
            }

            document.Close();
        }

        return PdfFinish.Add(
            held.ToArray(), [.. pages.Select(p => (p.Page.Title, p.Page.WidthMm * PointsPerMm, p.Page.HeightMm * PointsPerMm))]);
    }

    private static SKDocumentPdfMetadata Metadata(PdfInfo info) => new()
    {
        Title = info.Title,
        Author = info.Author,
        Subject = info.Subject,
        Creator = Tool,
        Producer = Tool,
        Creation = info.Date,
        Modified = info.Date,
        EncodingQuality = SKDocumentPdfMetadata.DefaultEncodingQuality,
        RasterDpi = SKDocumentPdfMetadata.DefaultRasterDpi,
    };
}
