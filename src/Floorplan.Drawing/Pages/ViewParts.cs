using Floorplan.Drawing.Frames;

namespace Floorplan.Drawing.Pages;

/// <summary>A view that is too large for the paper, cut into parts of equal size.</summary>
internal static class ViewParts
{
    /// <summary>
    /// A view in more parts than these is read by nobody; then a smaller scale or a larger paper is asked for. Own choice.
    /// </summary>
    public const int Most = 8;

    /// <summary>The view itself where it fits the page, or where parts would not help.</summary>
    public static IEnumerable<ISheetView> Of(ISheetView view, double denominator, PageSpace space)
    {
        var size = view.Measure(denominator);
        double height = space.Height - space.Title.Height - ViewStrip.Height;
        int across = size.Width <= space.Width ? 1 : Count(size.Width, space.Width - (2 * ViewPart.Beside));
        int down = size.Height + ViewStrip.Height <= space.Height ? 1 : Count(size.Height, height - (2 * ViewPart.Beside));
        return across * down is 1 or > Most
            ? [view]
            : Enumerable.Range(0, across * down).Select(i => (ISheetView)new ViewPart(view, i, across, down));
    }

    private static int Count(double length, double most) => most <= 0 ? Most + 1 : (int)Math.Min(Most + 1, Math.Ceiling(length / most));
}
