using Floorplan.Drawing.Scene;
using Floorplan.Tests.Cli;
using Floorplan.Tests.Drawing.Support;
using NetTopologySuite.Geometries;
using Xunit;
using Xunit.Abstractions;

namespace Floorplan.Tests.Outside.RenderedText;

/// <summary>The same as <see cref="ChromiumTextTests"/> in librsvg, which file managers and word processors draw SVG with.</summary>
public sealed class LibrsvgTextTests(ITestOutputHelper output)
{
    [SkippableFact]
    public void No_text_lies_over_another()
    {
        Require();
        var faults = new List<string>();
        foreach (var typeface in Typeface.All)
        {
            using var folder = new TemporaryFolder();
            var librsvg = new LibrsvgTexts(typeface, DrawnTexts.Plans.SelectMany(p => DrawnPlans.Set(p).Texts()), folder);
            foreach (string plan in DrawnTexts.Plans)
            {
                var pages = DrawnPlans.Set(plan);
                faults.AddRange(DrawnTexts.Faults($"{plan}, {typeface}", pages, Boxes(librsvg, pages), output));
            }
        }

        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }

    /// <summary>The measurement sees what it is there to see: the typeface that is asked for, and an overlap.</summary>
    [SkippableFact]
    public void A_text_that_is_too_near_is_found_in_a_wide_typeface()
    {
        Require();
        var faults = new List<string>();
        foreach (var typeface in Typeface.All)
        {
            using var folder = new TemporaryFolder();
            SheetScene[] pages = [DrawnTexts.TooNear];
            faults.AddRange(
                DrawnTexts.Faults(typeface.Name, pages, Boxes(new LibrsvgTexts(typeface, pages.Texts(), folder), pages), output));
        }

        Assert.StartsWith("DejaVu Sans: near: \"Evisceration and washing\" at 10, 20 and \"o\"", Assert.Single(faults));
    }

    private static void Require()
    {
        Typeface.RequireAll();
        OutsidePrograms.Find("rsvg-convert");
    }

    private static List<IReadOnlyList<Geometry>> Boxes(LibrsvgTexts librsvg, IEnumerable<SheetScene> pages)
        => [.. pages.Select(p => (IReadOnlyList<Geometry>)[.. p.Items.OfType<TextItem>().Select(librsvg.Box)])];
}
