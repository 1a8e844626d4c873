using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Drawing.Support;
using NetTopologySuite.Geometries;
using Xunit;
using Xunit.Abstractions;

namespace Floorplan.Tests.Outside.RenderedText;

/// <summary>The texts of pages as a program drew them, judged as the texts of a scene are.</summary>
internal static class DrawnTexts
{
    public static IReadOnlyList<string> Plans { get; } = [.. Thoroughness.Slice(AllPlans.Templates, 5)];

    /// <summary>One page with a short text that meets the long one before it only where that is drawn wider than in Inter.</summary>
    public static SheetScene TooNear { get; } = new("near", "Near", "", 100, 40, [Long, Short]);

    private static TextItem Long => new("Evisceration and washing", new(10, 20), 2.5, TextAnchor.Start, "text");

    private static TextItem Short => new("o", new(10 + ((Width(TextMeasure.WidthInInter) + Width(TextMeasure.Width)) / 2), 20), 2.5,
        TextAnchor.Start, "text");

    /// <param name="boxes">Of each page, of each of its texts.</param>
    public static IReadOnlyList<string> Faults(
        string of, IReadOnlyList<SheetScene> pages, IReadOnlyList<IReadOnlyList<Geometry>> boxes, ITestOutputHelper output)
    {
        Assert.Equal(pages.Select(p => p.Items.OfType<TextItem>().Count()), boxes.Select(b => b.Count));
        var faults = pages.Zip(boxes).SelectMany(p => SceneAudit.Faults(p.First, p.Second).Select(f => $"{of}: {p.First.Name}: {f}"))
            .ToList();
        var shares = pages.Zip(boxes).SelectMany(p => p.First.Items.OfType<TextItem>().Zip(p.Second, Share)).OrderDescending().ToList();
        output.WriteLine(
            $"{of}: {shares.Count} texts, {faults.Count} faults; of the promised width the widest takes {shares[0]:0.000}, "
                + $"the median {shares[shares.Count / 2]:0.000}");
        return faults;
    }

    private static double Share(TextItem text, Geometry drawn)
    {
        var around = drawn.EnvelopeInternal;
        bool upright = Math.Abs(text.Degrees - 90) < 1;
        return (upright ? around.Height : around.Width) / TextMeasure.Width(text.Text, text.CapHeight, text.Bold);
    }

    private static double Width(Func<string, double, bool, double> measure) => measure(Long.Text, Long.CapHeight, false);
}
