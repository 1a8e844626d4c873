using Floorplan.Drawing.Scene;
using Floorplan.Print.Painting;
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
    {
        using var held = new MemoryStream();
        using (var stream = new SKManagedWStream(held))
        using (var document = SKDocument.CreatePdf(stream, Metadata(info)))
        {
            foreach (var sheet in sheets)
            {
                using var canvas = document.BeginPage((float)(sheet.WidthMm * PointsPerMm), (float)(sheet.HeightMm * PointsPerMm));
                canvas.Scale((float)PointsPerMm);
                ScenePainter.Paint(sheet, canvas);
                document.EndPage();
            }

            document.Close();
        }

        return PdfFinish.Add(held.ToArray(), [.. sheets.Select(s => (s.Title, s.WidthMm * PointsPerMm, s.HeightMm * PointsPerMm))]);
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
