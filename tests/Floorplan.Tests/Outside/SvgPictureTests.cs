using System.Xml.Linq;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Cli;
using Xunit;
using Xunit.Abstractions;

namespace Floorplan.Tests.Outside;

/// <summary>Every sheet of every template looks alike in Chromium, librsvg and Skia, which share no SVG code.</summary>
public class SvgPictureTests(ITestOutputHelper output)
{
    /// <summary>A 0.25 mm line is then most of a pixel.</summary>
    private const int PixelsPerMm = 3;

    /// <summary>
    /// Renderers smooth the edges of letters differently, so the mean grows with the text on a sheet: plans measure up to 0.013, sheet 9,
    /// which is all text and since its sources stand whole on smaller paper, 0.031. One block differs by 0.056 at most; a missing bench
    /// makes it 0.08 and more.
    /// </summary>
    private const double MostMean = 0.045;
    private const double MostOfOneBlock = 0.08;

    public static TheoryData<string> Templates =>
        [.. Thoroughness.Slice(Plans.Templates.Select(t => Path.GetFileNameWithoutExtension(t)), 6)];

    [SkippableTheory]
    [MemberData(nameof(Templates))]
    public void All_renderers_draw_the_same_picture(string template)
    {
        OutsidePrograms.Find("chromium", "google-chrome");
        OutsidePrograms.Find("rsvg-convert");
        using var folder = new TemporaryFolder();
        var renderers = new Renderers(InterFonts.Install(folder.Path));
        CliRun.In(folder.Path, "", "new", template, "a.unit");
        CliRun.In(folder.Path, "", "draw", "a.unit", "--out", ".");

        foreach (string svg in Directory.EnumerateFiles(folder.Path, "*.svg").Order(StringComparer.Ordinal))
        {
            var (width, height) = Size(svg);
            string skia = svg + ".skia.png", chromium = svg + ".chromium.png", librsvg = svg + ".librsvg.png";
            Renderers.Skia(svg, skia, width, height);
            renderers.Chromium(svg, chromium, width, height);
            renderers.Librsvg(svg, librsvg, width, height);
            Compare(svg, "Chromium", PictureDifference.Between(skia, chromium));
            Compare(svg, "librsvg", PictureDifference.Between(skia, librsvg));
        }
    }

    /// <summary>The comparison sees what it is there to see.</summary>
    [SkippableFact]
    public void A_picture_with_one_thing_missing_is_told_apart()
    {
        OutsidePrograms.Find("rsvg-convert");
        using var folder = new TemporaryFolder();
        var renderers = new Renderers(InterFonts.Install(folder.Path));
        CliRun.In(folder.Path, "", "new", "fish-20ft", "a.unit");
        CliRun.In(folder.Path, "", "draw", "a.unit", "--out", ".", "--sheets", "1");
        string svg = Directory.EnumerateFiles(folder.Path, "*.svg").Single();
        var (width, height) = Size(svg);
        Renderers.Skia(svg, svg + ".png", width, height);

        string less = folder.Write("less.svg", WithoutOneStation(svg));
        renderers.Librsvg(less, less + ".png", width, height);
        var difference = PictureDifference.Between(svg + ".png", less + ".png");
        output.WriteLine($"{difference}");
        Assert.True(difference.WorstBlock > MostOfOneBlock, $"{difference}");
    }

    private void Compare(string svg, string renderer, PictureDifference difference)
    {
        output.WriteLine($"{Path.GetFileName(svg)} {renderer}: {difference}");
        Assert.True(difference.Mean < MostMean
            && difference.WorstBlock < MostOfOneBlock, $"{Path.GetFileName(svg)} differs between Skia and {renderer}: {difference}");
    }

    private static (int Width, int Height) Size(string svg)
    {
        string[] box = XDocument.Load(svg).Root!.Attribute("viewBox")!.Value.Split(' ');
        return (Pixels(box[2]), Pixels(box[3]));

        static int Pixels(string mm) => (int)Math.Round(double.Parse(mm, System.Globalization.CultureInfo.InvariantCulture) * PixelsPerMm);
    }

    private static string WithoutOneStation(string svg)
    {
        var document = XDocument.Load(svg);
        var parts = document.Descendants()
            .Where(e => e.Elements().Any(c => c.Name.LocalName == "title" && c.Value.Contains("station:bench", StringComparison.Ordinal)))
                .ToList();
        Assert.NotEmpty(parts);
        parts.ForEach(p => p.Remove());
        return document.ToString();
    }
}
