using System.Text.Json;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Svg;
using Microsoft.Playwright;
using NetTopologySuite.Geometries;

namespace Floorplan.Tests.Outside.RenderedText;

/// <summary>
/// What each text of some pages takes in Chromium. All pages stand in one document, whose style sheet puts one typeface after another in
/// the place of what they ask for: one start of the browser and one load for all of them.
/// </summary>
internal sealed class ChromiumTexts : IAsyncDisposable
{
    private static readonly string[] Flags =
    [
        "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
        "--disable-component-update", "--disable-sync",
    ];

    /// <summary>
    /// The width is that of the text as laid out, with kerning; how far its ink reaches over and under the line is asked of the canvas,
    /// since the box of a text is as high as the typeface's tallest letters, which overlap on any two lines. In mm, as [x, y] of four
    /// corners.
    /// </summary>
    private const string Boxes = """
        async name => {
          document.getElementById('typeface').textContent = `svg text { font-family: "${name}" !important }`;
          for (const weight of [400, 700]) await document.fonts.load(`${weight} 20px "${name}"`);
          const pen = document.createElement('canvas').getContext('2d');
          const em = 200;
          return JSON.stringify([...document.querySelectorAll('svg')].map(svg => [...svg.querySelectorAll('text')].map(text => {
            const box = text.getBBox();
            const size = parseFloat(text.getAttribute('font-size')) / em;
            pen.font = `${text.getAttribute('font-weight') || 400} ${em}px "${name}"`;
            const ink = pen.measureText(text.textContent);
            const line = parseFloat(text.getAttribute('y'));
            const top = line - ink.actualBoundingBoxAscent * size, bottom = line + ink.actualBoundingBoxDescent * size;
            const turn = text.transform.baseVal.consolidate()?.matrix ?? svg.createSVGMatrix();
            return [[box.x, top], [box.x + box.width, top], [box.x + box.width, bottom], [box.x, bottom]]
              .map(([x, y]) => [turn.a * x + turn.c * y + turn.e, turn.b * x + turn.d * y + turn.f]);
          })));
        }
        """;

    private readonly IPlaywright playwright;
    private readonly IPage page;

    private ChromiumTexts(IPlaywright playwright, IPage page)
    {
        this.playwright = playwright;
        this.page = page;
    }

    public static async Task<ChromiumTexts> Open()
    {
        string program = OutsidePrograms.Find("chromium", "google-chrome");
        var playwright = await Playwright.CreateAsync();
        var browser = await playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions { ExecutablePath = program, Args = Flags });
        return new ChromiumTexts(playwright, await browser.NewPageAsync());
    }

    public async ValueTask DisposeAsync()
    {
        await page.Context.Browser!.CloseAsync();
        playwright.Dispose();
    }

    /// <param name="pixelsPerMm">How large the pages are shown: browsers fit letters to their pixels.</param>
    public async Task Load(IEnumerable<SheetScene> pages, double pixelsPerMm)
    {
        string faces = string.Concat(Typeface.All.SelectMany(t => new[] { (Face: t, Bold: false), (Face: t, Bold: true) }).Select(f =>
            $"@font-face {{ font-family: \"{f.Face}\"; font-weight: {(f.Bold ? 700 : 400)}; "
                + $"src: url(data:font/ttf;base64,{Convert.ToBase64String(f.Face.Read(f.Bold))}) }}\n"));
        string sheets = string.Concat(pages.Select(p => FormattableString.Invariant(
            $"<div style=\"width:{p.WidthMm * pixelsPerMm:0.###}px\">{SvgWriter.Write(p)}</div>\n")));
        await page.SetContentAsync(
            $"<!DOCTYPE html><html><head><style>{faces} svg {{ width: 100%; height: auto }}</style><style id=\"typeface\"></style></head>"
                + $"<body>{sheets}</body></html>");
    }

    /// <summary>Of each page, the box of each text in their order, in mm on the paper.</summary>
    public async Task<IReadOnlyList<IReadOnlyList<Geometry>>> Measure(Typeface typeface)
    {
        string answer = await page.EvaluateAsync<string>(Boxes, typeface.Name);
        var pages = JsonSerializer.Deserialize<double[][][][]>(answer)!;
        return [.. pages.Select(p => (IReadOnlyList<Geometry>)[.. p.Select(Shape)])];
    }

    private static Geometry Shape(double[][] corners)
        => new Polygon(new LinearRing([.. corners.Append(corners[0]).Select(c => new Coordinate(c[0], c[1]))]));
}
