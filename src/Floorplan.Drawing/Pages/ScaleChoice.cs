using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Pages.Parts;

namespace Floorplan.Drawing.Pages;

/// <summary>Which scales a sheet may have, best first.</summary>
internal static class ScaleChoice
{
    /// <summary>
    /// Groups of scales: the first group that holds the sheet is taken, and of its scales the one that leaves least blank.
    /// </summary>
    public static IEnumerable<double[]> Of(SheetContent content, PageSpace space)
    {
        if (content.Wish?.Scale is { } wished and > 0)
        {
            return [[wished]];
        }

        var all = ScaleSeries.For(content.Units);
        if (content.Views.All(v => !v.HasScale))
        {
            return [[all[0]]];
        }

        double wanted = ScaleSeries.SmallestWanted(content.Units);
        if (content.PlanScale is { } set && content.Views is [{ IsPlan: true }])
        {
            return [[set], .. all.Where(s => s > set).Select(s => (double[])[s])];
        }

        double[] large = [.. all.Where(s => s <= wanted && Whole(content, s, space))];
        double[] small = [.. all.Where(s => s > wanted)];
        return
        [
            .. large.Length > 0 ? [large] : Array.Empty<double[]>(),
            .. small.Where(s => s <= Smallest(all) && Whole(content, s, space)).Select(s => (double[])[s]),
            .. small.Select(s => (double[])[s]),
        ];
    }

    /// <summary>Every view is seen whole and not in parts.</summary>
    private static bool Whole(SheetContent content, double scale, PageSpace space)
        => content.Views.All(v => ViewParts.Fits(v, scale, space, content.Units));

    /// <summary>1:100, or 1/8 in to the foot: smaller pictures are of no use where parts of larger ones will do.</summary>
    private static double Smallest(IReadOnlyList<double> all) => all.Last(s => s <= 100);
}
