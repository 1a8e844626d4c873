using Floorplan.Drawing.Frames;
using Floorplan.Language.Quantities;

namespace Floorplan.Drawing.Pages.Parts;

/// <summary>A view that is too large for the paper, cut into parts of about equal size.</summary>
internal static class ViewParts
{
    /// <summary>
    /// A view in more parts than these is read by nobody; then a smaller scale or a larger paper is asked for. Own choice.
    /// </summary>
    public const int Most = 8;

    /// <summary>The view itself where it fits the page, or where parts would not help.</summary>
    public static IEnumerable<ISheetView> Of(ISheetView view, double denominator, PageSpace space, UnitSystem units)
    {
        var size = view.Measure(denominator);
        if (Fits(view, denominator, space, units))
        {
            return [view];
        }

        double height = space.Height - space.Title.Height - ViewStrip.Height;
        const double besideCuts = 2 * (ViewPart.Beside + CutPlaces.Reach);
        int across = size.Width <= space.Width ? 1 : Count(size.Width, space.Width - besideCuts);
        int down = size.Height <= height ? 1 : Count(size.Height, height - besideCuts);
        if (across * down is 1 or > Most)
        {
            return [view];
        }

        var whole = new WholeView(view, size, denominator, units);
        var texts = whole.Texts;
        double[] columns = CutPlaces.Of(size.Width, across, [.. texts.Select(t => (t.Left, t.Right))]);
        double[] rows = CutPlaces.Of(size.Height, down, [.. texts.Select(t => (t.Top, t.Bottom))]);
        return Enumerable.Range(0, across * down).Select(i => (ISheetView)new ViewPart(whole, i, columns, rows));
    }

    /// <summary>Whole on a page, with the strip under it, beside the title block or over it.</summary>
    public static bool Fits(ISheetView view, double denominator, PageSpace space, UnitSystem units)
    {
        var size = view.Measure(denominator);
        double left = space.Inside.Left + PageSpace.Pad;
        double bottom = space.Inside.Top + PageSpace.Pad + size.Height;
        double strip = Math.Min(space.Width, ViewStrip.Width(view, denominator, units, hasBar: true));
        return size.Width <= space.Width && bottom <= space.Lowest(left + size.Width)
            && bottom + ViewStrip.Height <= space.Lowest(left + strip);
    }

    private static int Count(double length, double most) => most <= 0 ? Most + 1 : (int)Math.Min(Most + 1, Math.Ceiling(length / most));
}
