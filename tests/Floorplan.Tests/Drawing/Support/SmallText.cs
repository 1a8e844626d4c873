using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;

namespace Floorplan.Tests.Drawing.Support;

/// <summary>Texts of a page that are read with a lens only, a sentence each.</summary>
internal static class SmallText
{
    /// <summary>ISO 3098-1: the heights of lettering are 1.8, 2.5, 3.5, 5 mm and so on.</summary>
    private const double Smallest = 2.5;

    /// <summary>For marks in a tag, and for the names of the title block's fields.</summary>
    private const double SmallestTag = 2;

    /// <summary>As <c>hz1</c>, <c>circuit 3</c> or <c>WW 3 15/16"</c>; what is longer is not a tag. A tag may have several.</summary>
    private const int LongestTag = 11;

    public static IEnumerable<string> On(SheetScene page)
        => page.Items.OfType<TextItem>().Where(IsTooSmall)
            .Select(t => $"{page.Name}: {t.CapHeight:0.0} mm: \"{t.Text}\" of {t.Group}");

    private static bool IsTooSmall(TextItem text) => text.CapHeight < SmallestTag - 1e-9
        || (text.CapHeight < Smallest - 1e-9 && text.Layer != Layers.TitleBlock && text.Text.Split(", ").Any(t => t.Length > LongestTag));
}
