using Floorplan.Drawing.Frames;

namespace Floorplan.Drawing.Pages;

/// <summary>A view that is too wide for the paper, cut into parts of equal width.</summary>
internal static class ViewParts
{
    /// <summary>
    /// A view in more parts than these is read by nobody; then a smaller scale or a larger paper is asked for. Own choice.
    /// </summary>
    public const int Most = 8;

    /// <summary>What a match line and its words take of the width of a page, mm.</summary>
    private const double ForMatchLines = 12;

    /// <summary>The view itself where it is no wider than the page, or where parts would not help.</summary>
    public static IEnumerable<ISheetView> Of(ISheetView view, double denominator, PageSpace space)
    {
        var size = view.Measure(denominator);
        int parts = (int)Math.Ceiling(size.Width / (space.Width - ForMatchLines));
        return size.Width <= space.Width || parts > Most
            ? [view]
            : Enumerable.Range(0, parts).Select(i => (ISheetView)new ViewPart(view, i, parts));
    }
}
