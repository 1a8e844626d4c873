using Floorplan.Tests.Drawing.Support;
using Xunit;
using Xunit.Abstractions;

namespace Floorplan.Tests.Outside.RenderedText;

/// <summary>
/// All pages of the templates, in metric and feet, as Chromium shows them with Inter, with Liberation Sans (as wide as Arial) and with
/// DejaVu Sans: no text lies over another or over heavy lines, or leaves the frame.
/// </summary>
public sealed class ChromiumTextTests(ITestOutputHelper output)
{
    /// <summary>The size on paper at 96 pixels to the inch, and a page of A3 fitted into a window of 1280 pixels.</summary>
    private static readonly double[] PixelsPerMm = [96 / 25.4, 1280.0 / 420];

    [SkippableFact]
    public async Task No_text_lies_over_another()
    {
        Typeface.RequireAll();
        await using var chromium = await ChromiumTexts.Open();
        var faults = new List<string>();
        foreach (string plan in DrawnTexts.Plans)
        {
            var pages = DrawnPlans.Set(plan);
            foreach (double size in PixelsPerMm)
            {
                await chromium.Load(pages, size);
                foreach (var typeface in Typeface.All)
                {
                    string of = $"{plan}, {typeface}, {size:0.0} px/mm";
                    faults.AddRange(DrawnTexts.Faults(of, pages, await chromium.Measure(typeface), output));
                }
            }
        }

        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }

    /// <summary>The measurement sees what it is there to see: the typeface that is asked for, and an overlap.</summary>
    [SkippableFact]
    public async Task A_text_that_is_too_near_is_found_in_a_wide_typeface()
    {
        Typeface.RequireAll();
        await using var chromium = await ChromiumTexts.Open();
        await chromium.Load([DrawnTexts.TooNear], PixelsPerMm[0]);
        var faults = new List<string>();
        foreach (var typeface in Typeface.All)
        {
            faults.AddRange(DrawnTexts.Faults(typeface.Name, [DrawnTexts.TooNear], await chromium.Measure(typeface), output));
        }

        Assert.StartsWith("DejaVu Sans: near: \"Evisceration and washing\" at 10, 20 and \"o\"", Assert.Single(faults));
    }
}
