using System.Diagnostics;
using System.Globalization;
using SkiaSharp;
using Svg.Skia;
using Svg.Skia.TypefaceProviders;

namespace Floorplan.Tests.Outside;

/// <summary>Three programs by different hands that draw an SVG file as a PNG of a given size.</summary>
internal sealed class Renderers(string fontSettings)
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(1);

    /// <summary>Set to be a page's only picture, as a reader would open it.</summary>
    public void Chromium(string svg, string png, int width, int height)
    {
        string page = Path.ChangeExtension(png, ".html");
        File.WriteAllText(page, string.Create(CultureInfo.InvariantCulture,
            $"<!DOCTYPE html><body style='margin:0;background:#fff'><img src='{Path.GetFileName(svg)}' "
                + $"style='display:block;width:{width}px;height:{height}px'>"));
        Run(OutsidePrograms.Find("chromium", "google-chrome"),
            "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
            "--disable-component-update", "--disable-sync", "--disable-lcd-text", "--font-render-hinting=none", "--hide-scrollbars",
            "--force-device-scale-factor=1", $"--user-data-dir={Path.ChangeExtension(png, ".profile")}",
            string.Create(CultureInfo.InvariantCulture, $"--window-size={width},{height + 200}"), $"--screenshot={png}",
            new Uri(page).AbsoluteUri);
    }

    public void Librsvg(string svg, string png, int width, int height) => Run(
        OutsidePrograms.Find("rsvg-convert"),
        "-w", width.ToString(CultureInfo.InvariantCulture), "-h", height.ToString(CultureInfo.InvariantCulture),
        "--background-color=white", "-o", png, svg);

    public static void Skia(string svg, string png, int width, int height)
    {
        using var drawing = new SKSvg();
        drawing.Settings.TypefaceProviders = [new Inter()];
        using var picture = drawing.Load(svg) ?? throw new InvalidOperationException($"Svg.Skia reads no picture from {svg}");
        using var surface = SKSurface.Create(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Premul));
        surface.Canvas.Clear(SKColors.White);
        surface.Canvas.Scale(width / picture.CullRect.Width, height / picture.CullRect.Height);
        surface.Canvas.DrawPicture(picture);
        using var image = surface.Snapshot();
        using var data = image.Encode(SKEncodedImageFormat.Png, 100);
        File.WriteAllBytes(png, data.ToArray());
    }

    private void Run(string program, params string[] arguments)
    {
        var info = new ProcessStartInfo(program, arguments) { RedirectStandardError = true, RedirectStandardOutput = true };
        info.Environment["FONTCONFIG_FILE"] = fontSettings;
        using var process = Process.Start(info)!;
        var error = process.StandardError.ReadToEndAsync();
        _ = process.StandardOutput.ReadToEndAsync();
        if (!process.WaitForExit(Patience))
        {
            process.Kill(entireProcessTree: true);
            throw new TimeoutException($"{program} still runs after {Patience.TotalSeconds} s");
        }

        if (process.ExitCode != 0)
        {
            throw new InvalidOperationException($"{program} fails with {process.ExitCode}: {error.Result}");
        }
    }

    private sealed class Inter : ITypefaceProvider
    {
        private static readonly SKTypeface Regular = Load("Inter-Regular.ttf");
        private static readonly SKTypeface Bold = Load("Inter-Bold.ttf");

        public SKTypeface? FromFamilyName(
            string fontFamily, SKFontStyleWeight fontWeight, SKFontStyleWidth fontWidth, SKFontStyleSlant fontStyle)
            => fontWeight >= SKFontStyleWeight.SemiBold ? Bold : Regular;

        private static SKTypeface Load(string file)
        {
            using var data = SKData.CreateCopy(InterFonts.Read(file));
            return SKTypeface.FromData(data);
        }
    }
}
