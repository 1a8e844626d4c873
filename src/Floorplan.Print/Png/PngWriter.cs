using Floorplan.Drawing.Scene;
using Floorplan.Print.Painting;
using SkiaSharp;

namespace Floorplan.Print.Png;

/// <summary>Writes one sheet as a picture of a chosen fineness, which the file names so that it prints at true size.</summary>
public static class PngWriter
{
    public const int DefaultDpi = 150;

    /// <summary>Below this the smallest letters (1.8 mm) cannot be read; own measurement.</summary>
    public const int LeastDpi = 50;

    public const int MostDpi = 600;

    /// <summary>A picture takes 4 bytes of memory a pixel; this is 1.2 GB, an A1 sheet at 600 dpi. Own choice.</summary>
    public const long MostPixels = 300_000_000;

    /// <summary>Of all pictures that are made side by side: 200 MB. Own choice.</summary>
    private const long MostPixelsAtOnce = 50_000_000;

    /// <summary>Line work is mostly white, for which guessing from neighbours costs time and gains nothing; own measurement.</summary>
    private static readonly SKPngEncoderOptions Compression = new(SKPngEncoderFilterFlags.None, 6);

    private const double MmPerInch = 25.4;

    /// <summary>Width and height in pixels.</summary>
    public static (int Width, int Height) Size(SheetScene sheet, int dpi) => (Pixels(sheet.WidthMm, dpi), Pixels(sheet.HeightMm, dpi));

    /// <summary>True when the picture is small enough to make.</summary>
    public static bool Fits(SheetScene sheet, int dpi) => Size(sheet, dpi) is var (width, height) && (long)width * height <= MostPixels;

    /// <summary>How many of these sheets' pictures to make side by side, so that memory stays bounded; at least one.</summary>
    public static int AtOnce(IEnumerable<SheetScene> sheets, int dpi, int processors)
        => (int)Math.Clamp(MostPixelsAtOnce / sheets.Select(s => Size(s, dpi)).Max(s => (long)s.Width * s.Height), 1, processors);

    /// <summary>The finest that a sheet's picture can be.</summary>
    public static int MostFor(SheetScene sheet)
        => Enumerable.Range(LeastDpi, MostDpi - LeastDpi + 1).LastOrDefault(dpi => Fits(sheet, dpi), LeastDpi);

    public static byte[] Write(SheetScene sheet, int dpi)
    {
        var (width, height) = Size(sheet, dpi);
        using var surface = SKSurface.Create(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Opaque))
            ?? throw new InvalidOperationException($"no memory for a picture of {width} x {height} pixels");
        surface.Canvas.Clear(SKColors.White);
        surface.Canvas.Scale((float)(dpi / MmPerInch));
        ScenePainter.Paint(sheet, surface.Canvas);
        using var pixels = surface.PeekPixels();
        using var data = pixels.Encode(Compression) ?? throw new InvalidOperationException($"{sheet.Name} gives no picture");
        return PngPhysicalSize.Add(data.ToArray(), dpi);
    }

    private static int Pixels(double mm, int dpi) => (int)Math.Round(mm * dpi / MmPerInch);
}
